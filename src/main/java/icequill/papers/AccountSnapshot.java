package icequill.papers;

import icequill.account.AccountOf;
import icequill.account.Movement;
import icequill.account.ReminderTerms;
import icequill.account.Standing;
import icequill.money.Amounts;
import icequill.party.BillTo;
import icequill.party.Language;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * A customer's account that was read, as it stands at the end of a day, with everything that goes into its papers.
 *
 * @param language the customer's; empty for the shop's
 */
public record AccountSnapshot(Shop shop, BillTo billTo, Optional<Language> language, Optional<String> vendorNumber,
        AccountOf account, Standing standing, ReminderTerms terms) {

    /** What was left out because it is dated after the day. */
    public List<Problem> notices() {
        return standing.later().stream().map(this::leftOut).toList();
    }

    private Problem leftOut(Movement later) {
        return new Problem(Code.WRONG_ORDER, later.place(),
                Amounts.plain(later.amount()) + " dated " + later.date() + " is left out", "up to " + standing.day());
    }
}
