package icequill.ledger.trail;

import icequill.ledger.store.DamagedRow;
import icequill.ledger.store.Seal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.Nested;
import org.jdbi.v3.core.mapper.reflect.ColumnName;
import org.jspecify.annotations.Nullable;

/**
 * A row of the trail, and what stands beside it.
 *
 * @param number from 1, without gaps
 * @param notedAt a moment in UTC, to the millisecond
 * @param kind a {@link Subject} by name
 * @param entry what it is called
 * @param event a {@link TrailEvent} by name
 */
public record TrailRow(long number, String notedAt, String who, String office, String kind, String entry, String event,
        @Nested("before") Side before, @Nested("after") Side after, String previousSeal) {

    /**
     * What the entry was on one side of the change.
     *
     * @param owner the customer it told of
     * @param hash of the value; empty where there was no such entry
     * @param value empty also where it was forgotten
     */
    public record Side(@ColumnName("of") Optional<String> owner, Optional<String> hash, Optional<Value> value) {

        static final Side NONE = new Side(Optional.empty(), Optional.empty(), Optional.empty());

        /** Whether the value is not there though the row says that there was one. */
        public boolean isGone() {
            return hash.isPresent() && value.isEmpty();
        }

        public Optional<String> data() {
            return value.map(Value::data);
        }
    }

    /** What can be forgotten. */
    public record Value(String salt, String data) {

        public String hash() {
            return Seal.of(Arrays.asList(salt, data));
        }
    }

    /** Stands before the first row of a book that was there before its trail. */
    public static final TrailRow STOOD = new TrailRow(0, "", "", "", Subject.BOOK.name(), "book",
            TrailEvent.STOOD.name(), Side.NONE, Side.NONE, Seal.NONE);

    /** When it was noted. */
    public Instant at() {
        return DamagedRow.made("noted_at", () -> Instant.parse(notedAt));
    }

    /** What it is called in a message. */
    public String text() {
        return "row " + number + " of the trail";
    }

    /** Over everything that may not change, in a fixed order. */
    public String seal() {
        List<@Nullable String> parts = new ArrayList<>(
                List.of(previousSeal, String.valueOf(number), notedAt, who, office, kind, entry, event));
        for (Side side : List.of(before, after)) {
            parts.add(side.owner().orElse(null));
            parts.add(side.hash().orElse(null));
        }
        return Seal.of(parts);
    }
}
