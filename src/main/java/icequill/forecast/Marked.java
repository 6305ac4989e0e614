package icequill.forecast;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * An amount that stands beside the cash.
 *
 * @param mark of the least sure of what it rests on
 */
public record Marked(MonetaryAmount amount, Mark mark, Explanation how) {

    /** The figure must end in a named rounding. */
    static Marked of(Figure figure, Mark mark, CurrencyUnit currency) {
        Explanation how = Explanation.of(figure);
        return new Marked(how.amount(currency), mark, how);
    }
}
