package icequill.pricer;

import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.work.PurchaseOrder;
import java.util.Optional;

/** Compares a price with what the customer allowed. */
public final class SpendingLimit {

    private SpendingLimit() {
    }

    /** A problem when the net, before tax, is above the order's limit. */
    public static Optional<Problem> exceeded(PricedVisit priced, PurchaseOrder order) {
        return order.limit().filter(priced.net()::isGreaterThan)
                .map(limit -> new Problem(Code.OVER_LIMIT, order.place(),
                        "the price before tax is " + Amounts.plain(priced.net()) + ", above the limit of "
                                + Amounts.plain(limit) + " that the customer set",
                        "ask for a higher limit and record it with its approver, or charge less"));
    }
}
