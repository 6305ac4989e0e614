package icequill.forecast.effects;

import icequill.explain.Figure;
import java.math.BigDecimal;

/**
 * A quantity for 100 lb of ice that falls in a straight line as machines get larger.
 *
 * @param base at a harvest rate of zero
 * @param aPound how much less for each pound in 24 hours, from 0
 */
public record Line(BigDecimal base, BigDecimal aPound) {

    /** At a harvest rate, lb in 24 hours. */
    public Figure at(BigDecimal harvest, String unit) {
        Figure start = Figure.term(base, unit);
        return aPound.signum() == 0
                ? start
                : start.minus(Figure.term(aPound, "").times(Figure.term(harvest, "lb")));
    }
}
