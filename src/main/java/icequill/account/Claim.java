package icequill.account;

import icequill.explain.Explanation;
import icequill.money.Amounts;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What is asked for of one invoice that is past due.
 *
 * @param setOff what other credits of the customer take off it
 * @param asked what is open, less what is disputed and set off; zero or more
 * @param late what is asked on top of it for paying late
 */
public record Claim(Owed owed, MonetaryAmount setOff, MonetaryAmount asked, Optional<Late> late) {

    /** Interest, as it was figured, and the fixed compensation. */
    public record Late(MonetaryAmount interest, Explanation how, Optional<MonetaryAmount> fixed) {

        MonetaryAmount sum() {
            return fixed.map(interest::add).orElse(interest);
        }
    }

    /** Interest and compensation together. */
    public MonetaryAmount onTop() {
        return late.map(Late::sum).orElseGet(() -> Amounts.zero(asked.getCurrency()));
    }
}
