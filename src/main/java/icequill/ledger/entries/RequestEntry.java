package icequill.ledger.entries;

import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * In the book, what the shop was asked for.
 *
 * @param kind of paper that is to come of it
 * @param id within its kind
 * @param data all that is known of it, as the caller writes it; blank once it was forgotten with its customer
 */
public record RequestEntry(String kind, String id, @ColumnName("site_id") String site, String data) {

    /** Whether what it said was let go with its customer. */
    public boolean isForgotten() {
        return data.isEmpty();
    }
}
