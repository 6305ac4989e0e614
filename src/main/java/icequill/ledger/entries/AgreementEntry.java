package icequill.ledger.entries;

import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * An agreement in the book.
 *
 * @param id lower-case letters, digits and hyphens
 * @param number of the agreement, which no other has
 * @param data all that is known of it, as the caller writes it; blank once it was forgotten with its customer
 */
public record AgreementEntry(String id, String number, @ColumnName("site_id") String site, String data) {

    /** Whether what it said was let go with its customer. */
    public boolean isForgotten() {
        return data.isEmpty();
    }
}
