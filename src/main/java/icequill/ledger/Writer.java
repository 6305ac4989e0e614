package icequill.ledger;

import icequill.ledger.papers.Issuing;
import icequill.ledger.papers.KeptPdfs;
import icequill.ledger.papers.PaperFiles;
import icequill.ledger.papers.PaperRows;
import icequill.ledger.store.BookContext;
import icequill.ledger.store.BookLock;
import icequill.ledger.store.BookPlace;
import icequill.ledger.store.Connections;
import icequill.ledger.store.CutAtCommit;
import icequill.ledger.store.Dialect;
import icequill.ledger.store.SqlErrors;
import icequill.ledger.store.Step;
import icequill.ledger.trail.Trail;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.channels.FileLock;
import java.time.Clock;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/** Runs the transactions that change a book, one at a time: threads by a lock of their own, processes by the database's way. */
final class Writer implements AutoCloseable {

    private final BookPlace place;
    private final Dialect dialect;
    private final Jdbi database;
    private final Jdbi afresh;
    private final Optional<BookLock> lock;
    private final PaperFiles files;
    private final BookContext surroundings;
    /** Fair, so that no thread waits for ever. */
    private final ReentrantLock turn = new ReentrantLock(true);

    /** @param lock of a book that is a file */
    Writer(BookPlace place, Connections connections, Optional<BookLock> lock, BookContext surroundings) {
        this.place = place;
        this.dialect = connections.dialect();
        this.database = connections.writer();
        this.afresh = connections.afresh();
        this.lock = lock;
        this.files = new PaperFiles(place.papers());
        this.surroundings = surroundings;
    }

    Clock clock() {
        return surroundings.clock();
    }

    <T> Validated<T> write(Function<Transaction, Validated<T>> work) {
        return alone(() -> committed(work));
    }

    /** Finishes what a stop left undone, if anything. */
    Validated<Boolean> recoverIfNeeded() {
        return SqlErrors.caught(place, () -> files.unfinished().isEmpty() ? Validated.valid(false) : alone(() -> {
            recover();
            return Validated.valid(true);
        }));
    }

    /** Runs something while nobody else writes. */
    <T> Validated<T> alone(SqlErrors.Work<T> work) {
        turn.lock();
        try {
            return SqlErrors.caught(place, () -> {
                if (lock.isEmpty()) {
                    return work.run();
                }
                Validated<FileLock> taken = lock.get().take();
                if (taken instanceof Validated.Valid<FileLock>(FileLock held)) {
                    try (held) {
                        return work.run();
                    }
                }
                return new Validated.Invalid<>(taken.problems());
            });
        } finally {
            turn.unlock();
        }
    }

    @Override
    public void close() {
        lock.ifPresent(BookLock::close);
    }

    private <T> Validated<T> committed(Function<Transaction, Validated<T>> work) throws IOException {
        @Nullable
        Done<T> done = null;
        try (Handle handle = database.open()) {
            handle.begin();
            try {
                done = worked(handle, work);
                commit(handle, done);
            } catch (CutAtCommit cut) {
                throw cut;
            } catch (RuntimeException | Error failed) {
                rollBack(handle, failed);
                throw failed;
            }
        } catch (CutAtCommit cut) {
            CutAtCommit.Fate fate = cut.fate(afresh, surroundings.patience());
            if (fate != CutAtCommit.Fate.STORED) {
                return Validated.invalid(CutAtCommit.problem(fate, place));
            }
        } catch (RuntimeException | Error failed) {
            // Whether a commit that failed was done none the less, only the rows can tell.
            try {
                recover();
            } catch (RuntimeException | IOException again) {
                // The next opening will do it.
                failed.addSuppressed(again);
            }
            throw failed;
        }
        return Objects.requireNonNull(done, "whoever fails before is thrown").finished();
    }

    /** What the work came to, and the papers that it issued. */
    private record Done<T>(Validated<T> result, Issuing issuing) {

        boolean isSound() {
            return result.problems().isEmpty();
        }

        /** After the transaction. */
        Validated<T> finished() {
            if (isSound()) {
                issuing.step(Step.COMMITTED);
                issuing.finish();
            } else {
                issuing.discard();
            }
            return result;
        }
    }

    private <T> Done<T> worked(Handle handle, Function<Transaction, Validated<T>> work) {
        dialect.becomeWriter(handle, surroundings.patience());
        Instant now = surroundings.clock().instant();
        Trail trail = new Trail(handle, now, surroundings.author());
        Issuing issuing = new Issuing(handle, files, surroundings, trail, new KeptPdfs(handle, dialect));
        return new Done<>(work.apply(new Transaction(handle, files, now, trail, issuing, dialect))
                .then(issuing::unlessAtFault), issuing);
    }

    private void commit(Handle handle, Done<?> done) {
        if (!done.isSound()) {
            handle.rollback();
            return;
        }
        done.issuing().force();
        Optional<String> number = CutAtCommit.number(dialect, handle);
        done.issuing().step(Step.BEFORE_COMMIT);
        try {
            handle.commit();
        } catch (JdbiException failed) {
            throw number.<RuntimeException>map(known -> new CutAtCommit(known, failed)).orElse(failed);
        }
    }

    /** SQLite itself rolls back where a disk is full or fails (sqlite.org/lang_transaction.html), and then refuses to do it again. */
    private static void rollBack(Handle handle, Throwable failed) {
        try {
            handle.rollback();
        } catch (JdbiException nothingLeft) {
            failed.addSuppressed(nothingLeft);
        }
    }

    private void recover() throws IOException {
        try (Handle handle = database.open()) {
            handle.begin();
            dialect.becomeWriter(handle, surroundings.patience());
            files.recover(number -> PaperRows.byNumber(handle, number));
            handle.rollback();
        }
    }
}
