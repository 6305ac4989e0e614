package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a line costs the shop, with the rate it was priced from by file and line. Never shown to a customer.
 *
 * @param amount zero where it is not known
 */
public record Cost(MonetaryAmount amount, Explanation how, boolean isKnown) {

    Cost(MonetaryAmount amount, Explanation how) {
        this(amount, how, true);
    }

    /** Nothing, for the reason under a key of the words. */
    static Cost none(CurrencyUnit currency, String why) {
        MonetaryAmount zero = Amounts.zero(currency);
        return new Cost(zero, Explanation.of(Figure.price(zero, ""), Phrase.of(why)));
    }

    /** Nobody wrote it down, so that nothing can be said of what the line earns. */
    static Cost unknown(CurrencyUnit currency) {
        Cost none = none(currency, "owner.cost-unknown");
        return new Cost(none.amount(), none.how(), false);
    }
}
