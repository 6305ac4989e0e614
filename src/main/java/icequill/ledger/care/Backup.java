package icequill.ledger.care;

import icequill.files.disk.Folder;
import icequill.files.disk.Hash;
import icequill.files.disk.Unfinished;
import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.Pdf;
import icequill.ledger.papers.Series;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.store.Dialect;
import icequill.ledger.store.Flush;
import icequill.ledger.store.Schema;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.LongConsumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/** Writes a book into one file, as it is at one moment, while others go on working. */
public final class Backup {

    private static final int FETCHED = 200;

    private final Jdbi database;
    private final Dialect dialect;
    private final FileScope scope;
    private final PaperFiles files;
    private final PaperReader reader;
    private final Clock clock;

    public Backup(Jdbi database, Dialect dialect, FileScope scope, PaperReader reader, Clock clock) {
        this.database = database;
        this.dialect = dialect;
        this.scope = scope;
        this.files = scope.files();
        this.reader = reader;
        this.clock = clock;
    }

    public Validated<BackupReport> write(Path target, LongConsumer progress) throws IOException {
        if (Files.exists(target)) {
            return Validated.invalid(new Problem(Code.ALREADY_EXISTS, Place.ofFile(target.toString()),
                    "the file exists already", "a new name for each backup"));
        }
        Path folder = Folder.madeFor(target);
        try (Unfinished file = Unfinished.of(target)) {
            Problems findings = new Problems();
            Archive.Contents contents;
            try (ZipOutputStream zip = new ZipOutputStream(file.out())) {
                contents = database.inTransaction(dialect.snapshot(),
                        handle -> written(handle, zip, findings, progress));
                entry(zip, Archive.CONTENTS, Archive.JSON.writeValueAsBytes(contents));
            }
            file.finish();
            Flush.folder(folder);
            return Validated.valid(new BackupReport(target, contents.papers(), contents.heads(),
                    contents.trailHead(), contents.wrong().isEmpty(), findings.list()));
        }
    }

    private Archive.Contents written(Handle handle, ZipOutputStream zip, Problems findings, LongConsumer progress)
            throws IOException {
        AuditReport audit = new Audit(handle, dialect, scope, reader, count -> {
        }).report();
        findings.addAll(audit.findings());
        Map<String, String> hashes = new TreeMap<>();
        for (Archive.Table table : Archive.tables(Schema.NEWEST)) {
            hashes.put(table.name(), table(handle, zip, table));
        }
        List<String> missing = new ArrayList<>();
        Set<String> mended = new HashSet<>();
        long papers = 0;
        for (SeriesHead head : audit.heads()) {
            papers = papers(handle, zip, head.series(), new Progress(papers, progress, missing, mended));
        }
        progress.accept(papers);
        return new Archive.Contents(Archive.FORMAT, Schema.NEWEST, clock.instant().toString(), papers, audit.heads(),
                audit.trail(), hashes, missing,
                audit.findings().stream().filter(Archive::isDamage).map(Problem::message)
                        .filter(message -> !mended.contains(message)).toList());
    }

    /**
     * How far it has come, and what was found on the way.
     *
     * @param mended what an audit says of files here in whose place the backup has those of the book itself
     */
    private record Progress(long before, LongConsumer told, List<String> missing, Set<String> mended) {}

    private long papers(Handle handle, ZipOutputStream zip, Series series, Progress progress) {
        long[] count = {progress.before()};
        PaperRows.eachFile(handle, series, (number, hash) -> {
            paper(handle, zip, series, number, hash, progress);
            count[0]++;
            if (count[0] % 100 == 0) {
                progress.told().accept(count[0]);
            }
        });
        return count[0];
    }

    private void paper(Handle handle, ZipOutputStream zip, Series series, String number, String hash, Progress progress)
            throws IOException {
        // A number that is none would lead out of the folder.
        byte[] file = series.has(number) ? fileOf(series, number, hash) : null;
        boolean isHere = isWhole(file, hash);
        byte[] pdf = isHere ? file : new KeptPdfs(handle, dialect).of(number).map(Pdf::bytes).orElse(null);
        if (series.has(number) && pdf != null && isWhole(pdf, hash)) {
            entry(zip, Archive.entry(series, number), pdf);
            if (!isHere) {
                progress.mended().addAll(List.of(Archive.isMissing(number), Archive.isChanged(number)));
            }
        } else {
            // The audit has told of it, unless another office has it.
            progress.missing().add(number);
        }
    }

    private static boolean isWhole(byte @Nullable [] pdf, String hash) {
        return pdf != null && Hash.of(pdf).equals(hash);
    }

    private byte @Nullable [] fileOf(Series series, String number, String hash) {
        try {
            return files.read(series, number, hash);
        } catch (IOException unreadable) {
            return null;
        }
    }

    private static String table(Handle handle, ZipOutputStream zip, Archive.Table table) throws IOException {
        zip.putNextEntry(new ZipEntry(table.entry()));
        MessageDigest digest = Hash.digest();
        DigestOutputStream out = new DigestOutputStream(zip, digest);
        handle.createQuery("SELECT * FROM " + table.name() + " ORDER BY " + table.order()).setFetchSize(FETCHED)
                .scanResultSet((rows, context) -> {
                    try (context; ResultSet all = rows.get()) {
                        lines(all, out);
                    }
                    return table;
                });
        zip.closeEntry();
        return Hash.text(digest.digest());
    }

    private static void lines(ResultSet rows, OutputStream out) throws SQLException {
        ResultSetMetaData columns = rows.getMetaData();
        List<Object> line = new ArrayList<>();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            line.add(columns.getColumnName(i));
        }
        line(out, line);
        while (rows.next()) {
            line.clear();
            for (int i = 1; i <= columns.getColumnCount(); i++) {
                line.add(rows.getObject(i));
            }
            line(out, line);
        }
    }

    private static void line(OutputStream out, List<Object> values) {
        try {
            out.write(Archive.JSON.writeValueAsBytes(values));
            out.write("\n".getBytes(StandardCharsets.UTF_8));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void entry(ZipOutputStream zip, String name, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(bytes);
        zip.closeEntry();
    }
}
