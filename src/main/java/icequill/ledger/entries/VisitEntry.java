package icequill.ledger.entries;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * A visit in the book.
 *
 * @param isPlanned whether it is still to come; otherwise it was done
 * @param data all that is known of it, as the caller writes it
 */
public record VisitEntry(String id, String site, ZonedDateTime began, ZonedDateTime ended,
        Optional<String> purchaseOrder, boolean isPlanned, String data) {}
