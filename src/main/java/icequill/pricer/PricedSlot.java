package icequill.pricer;

import icequill.agreement.PlannedVisit;
import icequill.explain.Phrase;
import java.time.LocalTime;
import java.util.List;

/**
 * A planned visit with its price at list, line by line.
 *
 * @param arrival at the hour that it was priced for
 * @param remarks what must be known about it, for the shop
 */
public record PricedSlot(PlannedVisit visit, PricedVisit priced, LocalTime arrival, List<Phrase> remarks) {

    public PricedSlot {
        remarks = List.copyOf(remarks);
    }
}
