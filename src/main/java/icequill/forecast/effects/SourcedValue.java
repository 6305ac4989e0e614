package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Rounding;
import java.math.BigDecimal;

/**
 * A physical quantity that stands beside the cash.
 *
 * @param figure exact, with its unit in its terms
 * @param mark of the least sure of what it rests on
 */
public record SourcedValue(Figure figure, Provenance mark) {

    /** The quantity, rounded half away from zero to so many decimals. */
    public BigDecimal value(int decimals) {
        return Rounding.halfUp(figure.exact(), decimals);
    }
}
