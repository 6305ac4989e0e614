package icequill.ledger;

import icequill.files.disk.Folder;
import icequill.files.disk.OwnersOnly;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PapersAhead;
import icequill.ledger.store.Author;
import icequill.ledger.store.BookContext;
import icequill.ledger.store.BookLock;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.LockWait;
import icequill.ledger.store.PlaceCheck;
import icequill.ledger.store.Schema;
import icequill.ledger.store.SqlErrors;
import icequill.ledger.trail.Trail;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** Opens a book: looks whether the place will do, brings the tables up to date, and finishes what a stop left undone. */
public final class Opening {

    private Opening() {
    }

    /** Opens the book at a place, and makes it when there is none; finishes what a stop left undone. Waits ten seconds for others. */
    public static Validated<Book> open(BookPlace place, Clock clock, Author author) {
        return open(place, clock, author, LockWait.USUAL);
    }

    /**
     * Opens the book at a place, and makes it when there is none; finishes what a stop left undone.
     *
     * @param patience with others who write in it
     */
    public static Validated<Book> open(BookPlace place, Clock clock, Author author, LockWait patience) {
        return open(place, BookContext.usual(clock, patience, author));
    }

    /** The same, though papers may lie there already and a new book begin beside them. */
    public static Validated<Book> despitePapers(BookPlace place, Clock clock, Author author) {
        return open(place, BookContext.usual(clock, LockWait.USUAL, author), true);
    }

    static Validated<Book> open(BookPlace place, BookContext surroundings) {
        return open(place, surroundings, false);
    }

    /** @param despitePapers whether a book may begin where there are papers already */
    private static Validated<Book> open(BookPlace place, BookContext surroundings, boolean despitePapers) {
        return SqlErrors.caught(place, () -> {
            if (place instanceof BookPlace.InFile(Path database, Path papers) && isReadOnly(database)) {
                if (!Connections.isWhole(database) && Files.notExists(beside(database, "-shm"))) {
                    return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(place.text()),
                            "the newest entries stand in " + beside(database, "-wal") + " still, and the folder may not"
                                    + " be written to, which it takes to read them",
                            "a copy of the shop that may be written to"));
                }
                return looked(place, Connections.looking(database), surroundings);
            }
            OwnersOnly.folder(place.papers());
            Optional<BookLock> lock = Optional.empty();
            Optional<Problem> unsuitable = PlaceCheck.unsuitable(place);
            if (unsuitable.isPresent()) {
                return Validated.invalid(unsuitable.get());
            }
            if (place instanceof BookPlace.InFile(Path database, Path papers)) {
                BookLock own = BookLock.of(database, surroundings.patience());
                lock = Optional.of(own);
                Validated<Boolean> begun = Files.exists(database)
                        ? Validated.valid(true)
                        : begun(place, own, database, despitePapers);
                if (begun instanceof Validated.Invalid<Boolean> invalid) {
                    own.close();
                    return new Validated.Invalid<>(invalid.problems());
                }
            }
            return opened(place, Connections.to(place), lock, surroundings, despitePapers);
        });
    }

    /** Makes the database with the lock held, since a restore may be putting one there. */
    private static Validated<Boolean> begun(BookPlace place, BookLock lock, Path database, boolean despitePapers)
            throws IOException {
        return switch (lock.take()) {
        case Validated.Valid<FileLock>(FileLock held) -> {
            try (held) {
                // Connecting would make a new file.
                if (!despitePapers && !Files.exists(database) && !Folder.isEmpty(place.papers())) {
                    yield Validated.invalid(gone(place));
                }
                try (Connections connections = Connections.to(place)) {
                    Schema.migrate(connections, Schema.NEWEST);
                }
                yield Validated.valid(true);
            }
        }
        case Validated.Invalid<FileLock> inUse -> new Validated.Invalid<>(inUse.problems());
        };
    }

    private static Path beside(Path database, String ending) {
        return database.resolveSibling(database.getFileName() + ending);
    }

    private static boolean isReadOnly(Path database) {
        return Files.exists(database)
                && !(Files.isWritable(database) && Files.isWritable(database.toAbsolutePath().getParent()));
    }

    /** A copy that may not be written to is looked at as it is; what a stop left undone stays so. */
    private static Validated<Book> looked(BookPlace place, Connections connections, BookContext surroundings) {
        Validated<Book> book = SqlErrors.caught(place, () -> {
            int version = Schema.version(connections.reader());
            return version == Schema.NEWEST
                    ? Validated.valid(new Book(place, connections,
                            new Writer(place, connections, Optional.empty(), surroundings),
                            PapersAhead.of(connections.reader(), new PaperFiles(place.papers()))))
                    : Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(place.text()),
                            "the book was written by another version of the program, and may not be written to",
                            "a copy of the shop that may be written to"));
        });
        if (book instanceof Validated.Invalid<Book>) {
            connections.close();
        }
        return book;
    }

    private static Validated<Book> opened(BookPlace place, Connections connections, Optional<BookLock> lock,
            BookContext surroundings, boolean despitePapers) {
        Writer writer = new Writer(place, connections, lock, surroundings);
        Validated<Book> book = SqlErrors.caught(place, () -> ready(place, connections, writer, despitePapers)
                .map(ahead -> new Book(place, connections, writer, ahead)));
        if (book instanceof Validated.Invalid<Book>) {
            writer.close();
            connections.close();
        }
        return book;
    }

    /** What shows that the papers are ahead of the book; nothing of theirs is touched then. */
    private static Validated<List<Problem>> ready(BookPlace place, Connections connections, Writer writer,
            boolean despitePapers)
            throws IOException {
        int version = Schema.version(connections.writer());
        if (version > Schema.NEWEST) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.ofFile(place.text()),
                    "the book was written by a newer version of the program", "that version, or a later one"));
        }
        if (version == 0 && !despitePapers && !Folder.isEmpty(place.papers())) {
            return Validated.invalid(gone(place));
        }
        if (version > 0) {
            Files.deleteIfExists(new PaperFiles(place.papers()).restoring());
        }
        Validated<Boolean> current = version == Schema.NEWEST ? Validated.valid(true) : writer.alone(() -> {
            Schema.migrate(connections, Schema.NEWEST);
            return Validated.valid(true);
        });
        List<Problem> ahead = current.problems().isEmpty()
                ? PapersAhead.of(connections.reader(), new PaperFiles(place.papers()))
                : List.of();
        if (!ahead.isEmpty()) {
            return current.map(done -> ahead);
        }
        boolean isNew = despitePapers && connections.reader().withHandle(Schema::isEmpty);
        return current.then(done -> isNew ? Validated.valid(false) : writer.recoverIfNeeded())
                .then(done -> takenOver(connections, writer)).map(done -> ahead);
    }

    /** A book that is older than its trail goes into it as it stands. */
    private static Validated<Boolean> takenOver(Connections connections, Writer writer) {
        return connections.reader().withHandle(Trail::isBehind)
                ? writer.write(Transaction::takeOver)
                : Validated.valid(false);
    }

    private static Problem gone(BookPlace place) {
        if (Files.exists(new PaperFiles(place.papers()).restoring())) {
            return new Problem(Code.BOOK_DAMAGED, Place.ofFile(place.text()),
                    "a restore was stopped before its end, so there is no book yet", "the same restore again");
        }
        return new Problem(Code.BOOK_DAMAGED, Place.ofFile(place.text()),
                "the book's database is empty or gone, but there are issued papers in " + place.papers(),
                "restore the last backup into another folder, or: icequill restore --from-papers");
    }
}
