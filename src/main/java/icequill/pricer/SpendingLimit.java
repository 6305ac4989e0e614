package icequill.pricer;

import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.work.Call;
import icequill.work.Visit;
import java.util.Optional;

/** Compares a price with what the customer allowed. */
public final class SpendingLimit {

    private SpendingLimit() {
    }

    /** A problem when the net, before tax, is above the limit of the visit's order, or of the call that it answers. */
    public static Optional<Problem> exceeded(PricedVisit priced, Visit visit) {
        return visit.order().limit().filter(priced.net()::isGreaterThan)
                .map(limit -> new Problem(Code.OVER_LIMIT, visit.order().place(),
                        "the price before tax is " + Amounts.plain(priced.net()) + ", above the limit of "
                                + Amounts.plain(limit) + " that the customer set",
                        visit.call().flatMap(Call::id).map(call -> "record who allows more: icequill call approve "
                                + call + " --by NAME --limit AMOUNT; or charge less").orElse(
                                        "ask for a higher limit and record it with its approver, or charge less")));
    }
}
