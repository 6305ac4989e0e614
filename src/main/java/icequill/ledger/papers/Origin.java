package icequill.ledger.papers;

import java.util.Optional;

/**
 * What a paper was issued for; each by its id in the book.
 *
 * @param agreement its number
 * @param corrects the number of the invoice that a credit note gives back, in whole or in part
 * @param replaces the number of the invoice that this one is issued instead of
 */
public record Origin(Optional<String> customer, Optional<String> site, Optional<String> visit,
        Optional<String> agreement, Optional<String> corrects, Optional<String> replaces) {

    public static final Origin NONE = new Origin(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

    public static Origin ofVisit(String customer, String site, String visit) {
        return new Origin(Optional.of(customer), Optional.of(site), Optional.of(visit), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    /** The same, giving back (part of) an invoice; which takes the place of none. */
    public Origin correcting(String number) {
        return new Origin(customer, site, visit, agreement, Optional.of(number), Optional.empty());
    }

    /** The same, for another customer, who is billed for it. */
    public Origin billedTo(String other) {
        return new Origin(Optional.of(other), site, visit, agreement, corrects, replaces);
    }

    /** The same, in the place of an invoice. */
    public Origin replacing(String number) {
        return new Origin(customer, site, visit, agreement, Optional.empty(), Optional.of(number));
    }
}
