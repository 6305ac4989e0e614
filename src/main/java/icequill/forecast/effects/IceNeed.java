package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Percent;
import icequill.problem.Check;
import java.math.BigDecimal;

/**
 * The ice that a site needs of a machine.
 *
 * @param pounds a day
 */
public record IceNeed(SourcedValue pounds) {

    private static final BigDecimal FULL = new BigDecimal("100");

    /**
     * A part of what the machine can make.
     *
     * @param harvest lb in 24 hours
     * @param duty from 0 % to 100 %
     */
    public static IceNeed duty(BigDecimal harvest, Percent duty, Provenance mark) {
        Check.that(duty.value().signum() >= 0 && duty.value().compareTo(FULL) <= 0, "a duty of " + duty.value() + " %");
        return new IceNeed(
                new SourcedValue(Figure.term(harvest, "lb").times(Figure.percent(duty)), mark));
    }
}
