package icequill.ledger.entries;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * A visit in the book.
 *
 * @param data all that was recorded, as the caller writes it
 */
public record VisitEntry(String id, String site, ZonedDateTime began, ZonedDateTime ended,
        Optional<String> purchaseOrder, String data) {}
