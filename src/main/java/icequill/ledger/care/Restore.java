package icequill.ledger.care;

import icequill.files.disk.Folder;
import icequill.files.disk.OwnersOnly;
import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.papers.SeriesHead;
import icequill.ledger.store.BookLock;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.Dialect;
import icequill.ledger.store.Flush;
import icequill.ledger.store.LockWait;
import icequill.ledger.store.PlaceCheck;
import icequill.ledger.store.Schema;
import icequill.ledger.store.SqlErrors;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipException;
import org.jdbi.v3.core.Handle;
import tools.jackson.core.JacksonException;

/**
 * Makes a book out of a backup. It is put together beside its place, audited, and moved there only when it is whole; meanwhile nobody
 * else may begin a book there. What a stopped one left is cleared away by the next.
 */
public final class Restore {

    private final BookPlace target;
    private final PaperReader reader;
    private final LongConsumer progress;

    public Restore(BookPlace target, PaperReader reader, LongConsumer progress) {
        this.target = target;
        this.reader = reader;
        this.progress = progress;
    }

    public Validated<AuditReport> from(Path file) throws IOException {
        Optional<Problem> unsuitable = PlaceCheck.unsuitable(target);
        if (unsuitable.isPresent()) {
            return Validated.invalid(unsuitable.get());
        }
        if (Files.isSymbolicLink(target.papers())) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(target.papers().toString()),
                    "the folder of issued papers is a link, which a restore would replace", "a folder, or none"));
        }
        if (!Files.isRegularFile(file)) {
            return Validated.invalid(damaged(file, "there is no such file"));
        }
        try (OpenArchive archive = new OpenArchive(file)) {
            Archive.Contents contents = archive.contents();
            if (contents.format() > Archive.FORMAT || contents.schema() > Schema.NEWEST) {
                return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "the backup was written by a newer version of the program", "that version, or a later one"));
            }
            if (!contents.wrong().isEmpty()) {
                return Validated.invalid(damaged(file, "it was written for rescue, of a book that was damaged then: "
                        + String.join("; ", contents.wrong())));
            }
            return alone(() -> restored(file, archive));
        } catch (ZipException | JacksonException | BrokenArchive broken) {
            return Validated.invalid(damaged(file, String.valueOf(broken.getMessage())));
        }
    }

    /** Holds the lock of a book that is a file, until it is there. On a server the transaction does. */
    private Validated<AuditReport> alone(SqlErrors.Work<AuditReport> work) throws IOException {
        if (!(target instanceof BookPlace.InFile(Path database, Path papers))) {
            return work.run();
        }
        Folder.madeFor(database);
        try (BookLock lock = BookLock.of(database, LockWait.USUAL)) {
            Validated<FileLock> taken = lock.take();
            if (taken instanceof Validated.Valid<FileLock>(FileLock held)) {
                try (held) {
                    return work.run();
                }
            }
            return new Validated.Invalid<>(taken.problems());
        }
    }

    private Validated<AuditReport> restored(Path file, OpenArchive archive) throws IOException {
        if (target instanceof BookPlace.InFile(Path database, Path papers)) {
            Leftovers.of(database).clear();
            if (Files.exists(database) && !isNew(database)) {
                return Validated.invalid(inTheWay());
            }
            clearStopped();
        }
        String mark = Leftovers.mark();
        Path papers = Leftovers.beside(target.papers(), mark);
        OwnersOnly.folder(papers);
        BookPlace scratch = switch (target) {
        case BookPlace.InFile(Path database, Path ours) ->
            new BookPlace.InFile(Leftovers.beside(database, mark), papers);
        case BookPlace.OnServer(String url, Path ours) -> new BookPlace.OnServer(url, papers);
        };
        try {
            Validated<AuditReport> report = loaded(file, archive, scratch, new PaperFiles(papers));
            if (report instanceof Validated.Valid<AuditReport>) {
                if (scratch instanceof BookPlace.InFile(Path from, Path ours)
                        && target instanceof BookPlace.InFile(Path to, Path theirs)) {
                    for (String part : List.of("-wal", "-shm", "")) {
                        Files.deleteIfExists(to.resolveSibling(to.getFileName() + part));
                    }
                    Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
                    Flush.folder(Folder.madeFor(to));
                }
                Files.deleteIfExists(new PaperFiles(target.papers()).restoring());
            }
            return report;
        } finally {
            Folder.delete(papers);
            if (scratch instanceof BookPlace.InFile(Path database, Path ours)) {
                Files.deleteIfExists(database);
            }
        }
    }

    /** Whether nothing was entered yet, as in the book of a new shop. */
    private static boolean isNew(Path database) {
        try (Connections connections = Connections.looking(database)) {
            return connections.reader().withHandle(Schema::isEmpty);
        } catch (RuntimeException noBook) {
            return false;
        }
    }

    private Validated<AuditReport> loaded(Path file, OpenArchive archive, BookPlace scratch, PaperFiles files)
            throws IOException {
        try (Connections connections = Connections.to(scratch)) {
            Schema.migrate(connections, archive.contents().schema());
            Validated<AuditReport> report;
            try (Handle handle = connections.writer().open()) {
                handle.begin();
                connections.dialect().becomeWriter(handle, LockWait.USUAL);
                report = refused(handle).<Validated<AuditReport>>map(Validated::invalid)
                        .orElseGet(() -> filled(file, archive, handle, connections.dialect(), files));
                if (report instanceof Validated.Valid<AuditReport>) {
                    // The database comes last: where it is, there is a book. Until then the papers bear a mark.
                    Folder.madeFor(files.restoring());
                    Flush.write(files.restoring(), new byte[0]);
                    movePapers(files);
                    handle.commit();
                } else {
                    handle.rollback();
                }
            }
            Schema.migrate(connections, Schema.NEWEST);
            return report;
        }
    }

    /** Why nothing may be put here; with the writer's lock held. */
    private Optional<Problem> refused(Handle handle) {
        boolean filled = !Schema.isEmpty(handle);
        try {
            if (!filled) {
                clearStopped();
            }
            return filled || !Folder.isEmpty(target.papers()) ? Optional.of(inTheWay()) : Optional.empty();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Clears away what a restore left that was stopped before there was a book. */
    private void clearStopped() throws IOException {
        Leftovers.of(target.papers()).clear();
        if (Files.exists(new PaperFiles(target.papers()).restoring())) {
            Folder.delete(target.papers());
        }
    }

    private Validated<AuditReport> filled(Path file, OpenArchive archive, Handle handle, Dialect dialect,
            PaperFiles files) {
        Archive.Contents contents = archive.contents();
        for (Archive.Table table : Archive.tables(contents.schema())) {
            String hash = TableLoad.load(handle, table, archive.table(table));
            if (!hash.equals(contents.hashes().get(table.name()))) {
                throw new BrokenArchive("table " + table.name() + " is not as it was written");
            }
        }
        dialect.afterLoading(handle);
        KeptPdfs kept = new KeptPdfs(handle, dialect);
        for (SeriesHead head : contents.heads()) {
            PaperRows.eachFile(handle, head.series(), (number, hash) -> {
                if (!head.series().has(number)) {
                    throw new BrokenArchive("a paper of " + head.series().text() + " bears the number " + number);
                }
                Optional<byte[]> pdf = archive.paper(head.series(), number);
                if (pdf.isPresent()) {
                    Path place = files.place(head.series(), number);
                    Folder.madeFor(place);
                    Flush.write(place, pdf.get());
                    Flush.file(place);
                    if (contents.schema() >= Schema.WITH_PDFS) {
                        kept.keep(number, pdf.get());
                    }
                }
            });
        }
        AuditReport report = new Audit(handle, dialect, new FileScope(files, Optional.empty()), reader, progress)
                .report();
        Set<String> expected = contents.missing().stream().map(Archive::isMissing).collect(Collectors.toSet());
        if (!report.heads().equals(contents.heads()) || !report.trail().equals(contents.trailHead())
                || !report.findings().stream().filter(Archive::isDamage).map(Problem::message)
                        .collect(Collectors.toSet())
                        .equals(expected)) {
            return new Validated.Invalid<>(Stream.concat(Stream.of(damaged(file, "it fails its audit")),
                    report.findings().stream()).toList());
        }
        note(report.heads(), files);
        return Validated.valid(report);
    }

    private static void note(List<SeriesHead> heads, PaperFiles files) {
        try {
            for (SeriesHead head : heads) {
                if (head.papers() > 0) {
                    files.seals().put(head.series(), head.papers(), head.seal());
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void movePapers(PaperFiles files) throws IOException {
        Files.deleteIfExists(target.papers());
        Folder.madeFor(target.papers());
        Files.move(files.folder(), target.papers(), StandardCopyOption.ATOMIC_MOVE);
    }

    private Problem inTheWay() {
        return new Problem(Code.ALREADY_EXISTS, Place.ofFile(target.text()),
                "there is a book already, or papers of one in " + target.papers(),
                "a folder or database without a book: move folders book and papers/issued away");
    }

    private static Problem damaged(Path file, String why) {
        return new Problem(Code.BOOK_DAMAGED, Place.ofFile(file.toString()), "the backup cannot be used: " + why,
                "an earlier backup");
    }
}
