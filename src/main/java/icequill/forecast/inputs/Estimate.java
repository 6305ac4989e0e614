package icequill.forecast.inputs;

import icequill.problem.Check;
import java.math.BigDecimal;

/** A figure that nobody knows exactly, with a careful and a gloomy one around it. */
public record Estimate(BigDecimal usual, BigDecimal low, BigDecimal high, Origin origin) {

    public Estimate {
        Check.that(low.compareTo(usual) <= 0 && usual.compareTo(high) <= 0,
                "not in order: " + low + ", " + usual + ", " + high);
    }
}
