package icequill.money;

import icequill.problem.Check;
import java.math.BigDecimal;

/**
 * A percentage: 7.5 means 7.5 %.
 *
 * @param value from -1000 to 1000; held without trailing zeros
 */
public record Percent(BigDecimal value) {

    private static final BigDecimal MOST = BigDecimal.valueOf(1000);

    public static final Percent ZERO = new Percent(BigDecimal.ZERO);
    public static final Percent HUNDRED = of("100");

    public Percent {
        value = Exact.normal(Check.inRange(value, MOST.negate(), MOST, "percent"));
    }

    public static Percent of(String value) {
        return new Percent(new BigDecimal(value));
    }

    public Percent plus(Percent other) {
        return new Percent(value.add(other.value));
    }

    public boolean isZero() {
        return value.signum() == 0;
    }
}
