package icequill.ledger;

import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.UUID;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/** Makes a book out of a backup. It is put together beside its place, audited, and moved there only when it is whole. */
final class Restore {

    private final BookPlace target;
    private final PaperReader reader;
    private final LongConsumer progress;

    Restore(BookPlace target, PaperReader reader, LongConsumer progress) {
        this.target = target;
        this.reader = reader;
        this.progress = progress;
    }

    Checked<AuditReport> from(Path file) throws IOException {
        Optional<Problem> unsuitable = Opening.unsuitable(target);
        if (unsuitable.isPresent()) {
            return Checked.faulty(unsuitable.get());
        }
        if (!Folder.isEmpty(target.papers())
                || (target instanceof BookPlace.InFile(Path database, Path papers) && Files.exists(database))) {
            return Checked.faulty(inTheWay());
        }
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Archive.Contents contents = Archive.JSON.readValue(zip.getInputStream(entry(zip, Archive.CONTENTS)),
                    Archive.Contents.class);
            if (contents.format() > Archive.FORMAT || contents.schema() > Schema.NEWEST) {
                return Checked.faulty(new Problem(Code.NOT_ALLOWED, Place.ofFile(file.toString()),
                        "the backup was written by a newer version of the program", "that version, or a later one"));
            }
            return restored(zip, contents);
        } catch (ZipException | JacksonException broken) {
            return Checked.faulty(damaged(file, String.valueOf(broken.getMessage())));
        } catch (Broken broken) {
            return Checked.faulty(damaged(file, String.valueOf(broken.getMessage())));
        }
    }

    /** The file is not what a backup is. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Broken(String message) {
            super(message);
        }
    }

    private Checked<AuditReport> restored(ZipFile zip, Archive.Contents contents) throws IOException {
        String mark = ".restoring-" + UUID.randomUUID();
        Path papers = beside(target.papers(), mark);
        Files.createDirectories(papers);
        BookPlace scratch = switch (target) {
        case BookPlace.InFile(Path database, Path ours) -> {
            Folder.madeFor(database);
            yield new BookPlace.InFile(beside(database, mark), papers);
        }
        case BookPlace.OnServer(String url, Path ours) -> new BookPlace.OnServer(url, papers);
        };
        try {
            PaperFiles files = new PaperFiles(papers);
            Checked<AuditReport> report = loaded(zip, contents, scratch, files);
            if (report instanceof Checked.Sound<AuditReport>
                    && scratch instanceof BookPlace.InFile(Path from, Path ours)
                    && target instanceof BookPlace.InFile(Path to, Path theirs)) {
                Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
            }
            return report;
        } finally {
            Folder.delete(papers);
            if (scratch instanceof BookPlace.InFile(Path database, Path ours)) {
                Files.deleteIfExists(database);
            }
        }
    }

    private Checked<AuditReport> loaded(ZipFile zip, Archive.Contents contents, BookPlace scratch, PaperFiles files)
            throws IOException {
        try (Connections connections = Connections.to(scratch)) {
            Schema.migrate(connections, contents.schema());
            Checked<AuditReport> report;
            try (Handle handle = connections.writer().open()) {
                handle.begin();
                connections.dialect().becomeWriter(handle, Patience.USUAL);
                report = isFilled(handle)
                        ? Checked.faulty(inTheWay())
                        : filled(zip, contents, handle, connections.dialect(), files);
                if (report instanceof Checked.Sound<AuditReport>) {
                    // The database comes last: where it is, there is a book.
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

    private Checked<AuditReport> filled(ZipFile zip, Archive.Contents contents, Handle handle, Dialect dialect,
            PaperFiles files) {
        // A backup of an earlier schema lacks the tables that came later.
        Archive.TABLES.stream().filter(table -> contents.hashes().containsKey(table.name())).forEach(table -> {
            String hash = TableLoad.load(handle, table, stream(zip, entry(zip, table.entry())));
            if (!hash.equals(contents.hashes().get(table.name()))) {
                throw new Broken("table " + table.name() + " is not as it was written");
            }
        });
        dialect.afterLoading(handle);
        for (SeriesHead head : contents.heads()) {
            PaperRows.eachFile(handle, head.series(), (number, hash) -> {
                ZipEntry pdf = zip.getEntry(Archive.entry(head.series(), number));
                if (pdf != null) {
                    Path place = files.place(head.series(), number);
                    Folder.madeFor(place);
                    Flush.write(place, stream(zip, pdf).readAllBytes());
                    Flush.file(place);
                }
            });
        }
        AuditReport report = new Audit(handle, dialect, files, reader, progress).report();
        // What was issued wrong is restored as it was issued; only damage is in the way.
        long damages = report.findings().stream().filter(finding -> finding.code() == Code.BOOK_DAMAGED).count();
        return report.heads().equals(contents.heads()) && damages == contents.missing().size()
                ? Checked.sound(report)
                : new Checked.Faulty<>(Stream.concat(Stream.of(damaged(Path.of(zip.getName()), "it fails its audit")),
                        report.findings().stream()).toList());
    }

    private static boolean isFilled(Handle handle) {
        return Stream.of("series", "customer")
                .anyMatch(table -> handle.createQuery("SELECT 1 FROM " + table + " LIMIT 1")
                        .mapTo(Integer.class).findOne().isPresent());
    }

    private void movePapers(PaperFiles files) throws IOException {
        Files.deleteIfExists(target.papers());
        Folder.madeFor(target.papers());
        Files.move(files.folder(), target.papers(), StandardCopyOption.ATOMIC_MOVE);
    }

    private Problem inTheWay() {
        return new Problem(Code.ALREADY_EXISTS, Place.ofFile(target.text()),
                "there is a book already, or papers of one in " + target.papers(),
                "a folder or database without a book");
    }

    private static Problem damaged(Path file, String why) {
        return new Problem(Code.BOOK_DAMAGED, Place.ofFile(file.toString()), "the backup cannot be used: " + why,
                "an earlier backup");
    }

    private static ZipEntry entry(ZipFile zip, String name) {
        @Nullable
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw new Broken("it lacks " + name);
        }
        return entry;
    }

    private static InputStream stream(ZipFile zip, ZipEntry entry) {
        try {
            return zip.getInputStream(entry);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Path beside(Path place, String mark) {
        return place.resolveSibling("." + place.getFileName() + mark);
    }
}
