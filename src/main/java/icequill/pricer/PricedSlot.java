package icequill.pricer;

import icequill.agreement.PlannedVisit;
import icequill.explain.Phrase;
import java.util.List;

/**
 * A planned visit with its price at list, line by line.
 *
 * @param remarks what must be known about it, for the shop
 */
public record PricedSlot(PlannedVisit visit, PricedVisit priced, List<Phrase> remarks) {

    public PricedSlot {
        remarks = List.copyOf(remarks);
    }
}
