package icequill.ledger.trail;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Reads the trail as its rows say it. */
public final class TrailRows {

    static final String SELECT = """
            SELECT t.number, t.noted_at, t.who, t.office, t.kind, t.entry, t.event, t.before_of, t.before_hash, t.after_of,
                t.after_hash, t.previous_seal, t.seal, b.salt AS before_salt, b.data AS before_data, a.salt AS after_salt,
                a.data AS after_data
            FROM trail t LEFT JOIN trail_value b ON b.trail_number = t.number AND b.side = 'before'
                LEFT JOIN trail_value a ON a.trail_number = t.number AND a.side = 'after'
            """;

    /** Rows that are fetched at once from a server. */
    private static final int FETCHED = 500;

    private TrailRows() {
    }

    /** A row, and the seal that stands in it. */
    public record Sealed(TrailRow row, String seal) {}

    /** All of it, in its order, one row after another. */
    public static void each(Handle handle, Consumer<Sealed> work) {
        each(handle, "ORDER BY t.number", work);
    }

    /** All of it, entry by entry, the rows of each in their order. */
    public static void byEntry(Handle handle, Consumer<Sealed> work) {
        each(handle, "ORDER BY t.entry, t.kind, t.number", work);
    }

    /** The newest of an entry. */
    static Optional<TrailRow> newest(Handle handle, Subject subject, String entry) {
        return handle.createQuery(SELECT + "WHERE t.entry = :entry AND t.kind = :kind ORDER BY t.number DESC LIMIT 1")
                .bind("entry", entry).bind("kind", subject.name()).mapTo(TrailRow.class).findOne();
    }

    private static void each(Handle handle, String order, Consumer<Sealed> work) {
        try (Stream<Sealed> rows = handle.createQuery(SELECT + order).setFetchSize(FETCHED)
                .mapTo(Sealed.class).stream()) {
            rows.forEach(work);
        }
    }
}
