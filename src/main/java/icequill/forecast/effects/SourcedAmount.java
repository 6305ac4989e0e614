package icequill.forecast.effects;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * An amount that stands beside the cash.
 *
 * @param mark of the least sure of what it rests on
 */
public record SourcedAmount(MonetaryAmount amount, Provenance mark, Explanation how) {

    /** The figure must end in a named rounding. */
    public static SourcedAmount of(Figure figure, Provenance mark, CurrencyUnit currency) {
        Explanation how = Explanation.of(figure);
        return new SourcedAmount(how.amount(currency), mark, how);
    }
}
