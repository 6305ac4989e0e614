package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Percent;
import icequill.problem.Check;
import java.math.BigDecimal;

/**
 * Factors of compound interest, by the usual formulas of engineering economy; exact.
 *
 * @param rate a period, from 0 % to 100 %
 */
public record Interest(Percent rate) {

    private static final BigDecimal MOST = new BigDecimal("100");
    /** Longer than any machine is kept. */
    private static final int MOST_PERIODS = 100;

    public Interest {
        Check.inRange(rate.value(), BigDecimal.ZERO, MOST, "interest");
    }

    /** What one is worth so many periods later: (1 + i)^n. */
    public Figure growth(int periods) {
        Check.inRange(periods, 0, MOST_PERIODS, "periods");
        return new Figure.Power(one().plus(Figure.percent(rate)), periods);
    }

    /** Equal amounts at the end of each period that are worth one at the beginning: A/P. */
    public Figure annualOfPresent(int periods) {
        return rate.isZero()
                ? one().over(periods(periods))
                : Figure.percent(rate).times(growth(periods)).over(growth(periods).minus(one()));
    }

    private static Figure one() {
        return Figure.term(1, "");
    }

    private static Figure periods(int periods) {
        return Figure.term(Check.inRange(periods, 1, MOST_PERIODS, "periods"), "");
    }
}
