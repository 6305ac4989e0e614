package icequill.ledger.papers;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * What a paper was issued for; each by its id in the book.
 *
 * @param agreement its number
 * @param corrects the number of the invoice that a credit note gives back, in whole or in part
 * @param replaces the number of the invoice that this one is issued instead of
 * @param further visits that are billed with the first
 */
public record Origin(@ColumnName("customer_id") Optional<String> customer, @ColumnName("site_id") Optional<String> site,
        @ColumnName("visit_id") Optional<String> visit, Optional<String> agreement, Optional<String> corrects,
        Optional<String> replaces, List<At> further) {

    /** A visit and its site. */
    public record At(@ColumnName("visit_id") String visit, @ColumnName("site_id") String site) {}

    public Origin {
        further = List.copyOf(further);
    }

    /** Of one visit at most. */
    public Origin(Optional<String> customer, Optional<String> site, Optional<String> visit,
            Optional<String> agreement, Optional<String> corrects, Optional<String> replaces) {
        this(customer, site, visit, agreement, corrects, replaces, List.of());
    }

    public static final Origin NONE = new Origin(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty());

    public static Origin ofVisit(String customer, String site, String visit) {
        return new Origin(Optional.of(customer), Optional.of(site), Optional.of(visit), Optional.empty(),
                Optional.empty(), Optional.empty());
    }

    /** The same, with further visits. */
    public Origin with(List<At> visits) {
        return new Origin(customer, site, visit, agreement, corrects, replaces, visits);
    }

    /** The same, giving back (part of) an invoice; which takes the place of none, and is filed by its first visit. */
    public Origin correcting(String number) {
        return new Origin(customer, site, visit, agreement, Optional.of(number), Optional.empty());
    }

    /** The same, for another customer, who is billed for it. */
    public Origin billedTo(String other) {
        return new Origin(Optional.of(other), site, visit, agreement, corrects, replaces, further);
    }

    /** The same, in the place of an invoice. */
    public Origin replacing(String number) {
        return new Origin(customer, site, visit, agreement, Optional.empty(), Optional.of(number), further);
    }
}
