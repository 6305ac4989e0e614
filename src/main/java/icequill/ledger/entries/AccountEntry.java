package icequill.ledger.entries;

import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * In the book, what is known of a customer's account and no paper says.
 *
 * @param data as the caller writes it; blank once it was forgotten with its customer
 */
public record AccountEntry(@ColumnName("customer_id") String customer, String data) {

    /** Whether what it said was let go with its customer. */
    public boolean isForgotten() {
        return data.isEmpty();
    }
}
