package icequill.ledger;

import icequill.ledger.care.Against;
import icequill.ledger.care.Audit;
import icequill.ledger.care.AuditReport;
import icequill.ledger.care.Backup;
import icequill.ledger.care.BackupReport;
import icequill.ledger.care.FileScope;
import icequill.ledger.care.FilesCheck;
import icequill.ledger.care.Restore;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperReader;
import icequill.ledger.papers.PapersAhead;
import icequill.ledger.papers.SealLine;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Caches;
import icequill.ledger.store.Connections;
import icequill.ledger.store.SqlErrors;
import icequill.ledger.store.Workroom;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/** A shop's book, open for work. For many threads; one at a time writes. */
public final class Book implements AutoCloseable {

    private final Connections connections;
    private final Jdbi reader;
    private final Writer writer;
    private final PaperFiles files;
    private final BookPlace place;
    private final List<Problem> ahead;

    /** @param ahead what shows that the papers are ahead of the book, which is then only looked at */
    Book(BookPlace place, Connections connections, Writer writer, List<Problem> ahead) {
        this.place = place;
        this.connections = connections;
        this.reader = connections.reader();
        this.writer = writer;
        this.files = new PaperFiles(place.papers());
        this.ahead = List.copyOf(ahead);
    }

    /**
     * Changes the book. When the work returns problems, or throws, nothing of it stays; otherwise all of it is on the disk when this
     * returns.
     *
     * @return the work's own result, or what was in the way: somebody else writing, a full disk, papers that the book does not know
     */
    public <T> Validated<T> write(Function<Transaction, Validated<T>> work) {
        return ahead.isEmpty() ? writer.write(work) : new Validated.Invalid<>(ahead);
    }

    /** Looks at the book; all that the work sees is of one moment. */
    public <T> Validated<T> read(Function<Reading, Validated<T>> work) {
        return SqlErrors.caught(place, () -> reader.inTransaction(connections.dialect().snapshot(),
                handle -> work.apply(new Reading(handle, files, connections.dialect()))));
    }

    /**
     * Goes through the whole book: numbers without gaps, seals, sums, data, and a file to each paper as it was issued and no other.
     *
     * @param reader of the papers' data and files
     * @param office whose papers lie here, where offices that share the book have folders of their own; empty where all do
     * @param progress is told how many papers were looked at, now and then
     */
    public Validated<AuditReport> audit(PaperReader reader, Optional<String> office, LongConsumer progress) {
        return SqlErrors.caught(place, () -> {
            TransactionIsolationLevel snapshot = connections.dialect().snapshot();
            AtomicReference<List<Path>> unknown = new AtomicReference<>(List.of());
            AuditReport report = this.reader.inTransaction(snapshot, handle -> {
                unknown.set(new FilesCheck(handle, files).unknown());
                return new Audit(handle, connections.dialect(), new FileScope(files, office), reader, progress)
                        .report();
            }).and(PapersAhead.of(this.reader, files));
            return Validated.valid(this.reader.inTransaction(snapshot,
                    later -> Audit.withUnknown(report, unknown.get(), files, later)));
        });
    }

    /**
     * Holds the book against what was kept elsewhere.
     *
     * @param kept files (backups, PDFs, notes with a {@link SealLine}) or such lines
     * @return what differs
     */
    public Validated<List<Problem>> against(List<String> kept, PaperReader reader) {
        return SqlErrors.caught(place, () -> Validated.valid(this.reader.inTransaction(connections.dialect().snapshot(),
                handle -> new Against(handle, reader).findings(kept))));
    }

    /**
     * Writes the whole book into one file, as it is at one moment; others may go on working in it.
     *
     * @param file must not exist yet
     * @param reader of the papers' data and files, since the book is audited as it is written
     * @param office whose papers lie here, as for {@link #audit}
     * @param progress is told how many papers were written, now and then
     */
    public Validated<BackupReport> backup(Path file, PaperReader reader, Optional<String> office,
            LongConsumer progress) {
        return SqlErrors.caught(place,
                () -> new Backup(this.reader, connections.dialect(), new FileScope(files, office),
                        reader, writer.clock()).write(file, progress));
    }

    /**
     * Takes into the book the papers beside it that it lacks, out of their PDFs.
     *
     * @return the book's audit after it, with what could not be taken as findings before
     */
    public Validated<AuditReport> takeFromPapers(PaperReader reader, Optional<String> office, LongConsumer progress) {
        return writer.write(transaction -> {
            try {
                return Validated.valid(transaction.fromPapers(reader).run());
            } catch (IOException unreadable) {
                throw new UncheckedIOException(unreadable);
            }
        }).then(taken -> audit(reader, office, progress).map(report -> report.after(taken.problems())));
    }

    /** Tries whether a backup can be restored: makes a book of it in a cache that has room for it, and removes that. */
    public static Validated<AuditReport> verify(Path file, PaperReader reader, LongConsumer progress) {
        Problems unsuitable = new Problems();
        for (Path cache : Caches.of(file.toAbsolutePath())) {
            Validated<AuditReport> tried = SqlErrors.caught(BookPlace.inShop(cache), () -> {
                try (Workroom room = Workroom.in(cache)) {
                    return restore(file, BookPlace.inShop(room.folder()), reader, progress);
                }
            });
            if (tried.problems().stream().noneMatch(problem -> problem.code() == Code.CANNOT_WRITE)) {
                return tried;
            }
            unsuitable.addAll(tried.problems());
        }
        return new Validated.Invalid<>(unsuitable.list());
    }

    /**
     * Makes a book out of a backup, in whichever database. What is in the file is checked before there is a book.
     *
     * @param target where there must be no book yet
     * @param reader of the papers' data
     */
    public static Validated<AuditReport> restore(Path file, BookPlace target, PaperReader reader,
            LongConsumer progress) {
        return SqlErrors.caught(target, () -> new Restore(target, reader, progress).from(file));
    }

    @Override
    public void close() {
        writer.close();
        connections.close();
    }
}
