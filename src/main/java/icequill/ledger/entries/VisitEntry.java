package icequill.ledger.entries;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * A visit in the book.
 *
 * @param isPlanned whether it is still to come; otherwise it was done
 * @param data all that is known of it, as the caller writes it; blank once it was forgotten with its customer
 */
public record VisitEntry(String id, String site, ZonedDateTime began, ZonedDateTime ended,
        Optional<String> purchaseOrder, boolean isPlanned, String data) {

    /** Whether what it said was let go with its customer. */
    public boolean isForgotten() {
        return data.isEmpty();
    }
}
