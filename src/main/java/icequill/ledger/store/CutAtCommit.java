package icequill.ledger.store;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;

/** The connection to a server ended just as it was told to store: only the server knows whether it did. */
public final class CutAtCommit extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String transaction;

    /** What became of the transaction. */
    public enum Fate {
        STORED, NOT_STORED, UNKNOWN
    }

    /** @param transaction as the server numbers it */
    public CutAtCommit(String transaction, Throwable cause) {
        super(cause);
        this.transaction = transaction;
    }

    /** The transaction's own number, asked for while it is still open; empty where a commit cannot be cut off. */
    public static Optional<String> number(Dialect dialect, Handle handle) {
        return dialect == Dialect.POSTGRESQL
                ? handle.createQuery("SELECT CAST(pg_current_xact_id() AS TEXT)").mapTo(String.class).findOne()
                : Optional.empty();
    }

    /** Opens the book again and asks, for as long as patience lasts. */
    public Fate fate(Jdbi afresh, LockWait patience) {
        long until = patience.nanoseconds().getAsLong() + patience.longest().toNanos();
        Fate fate = asked(afresh);
        while (fate == Fate.UNKNOWN && patience.nanoseconds().getAsLong() < until) {
            patience.pause().run();
            fate = asked(afresh);
        }
        return fate;
    }

    private Fate asked(Jdbi afresh) {
        try {
            String status = afresh.withHandle(handle -> handle
                    .createQuery("SELECT pg_xact_status(CAST(:transaction AS xid8))").bind("transaction", transaction)
                    .mapTo(String.class).findOne().orElse(""));
            return switch (status) {
            case "committed" -> Fate.STORED;
            case "aborted" -> Fate.NOT_STORED;
            default -> Fate.UNKNOWN;
            };
        } catch (JdbiException noAnswer) {
            return Fate.UNKNOWN;
        }
    }

    /** What to tell where it was not stored, or nobody knows. */
    public static Problem problem(Fate fate, BookPlace place) {
        return fate == Fate.NOT_STORED
                ? new Problem(Code.CANNOT_WRITE, Place.ofFile(place.text()),
                        "the connection was cut as the book was being written, and nothing was stored",
                        "the same again")
                : new Problem(Code.OUTCOME_UNKNOWN, Place.ofFile(place.text()),
                        "the connection was cut as the book was being written: whether it was stored is not known yet",
                        "once the server answers, a look (icequill find, icequill show) before anything is done again");
    }
}
