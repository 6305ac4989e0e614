package icequill.planted.explain;

import icequill.planted.money.Careless;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Rounds outside {@code money}, and closes a cycle. */
public final class RoundingHelper {

    /** A rounding of its own. */
    public BigDecimal rounded(BigDecimal number, Careless other) {
        return number.setScale(2, RoundingMode.HALF_EVEN);
    }

    /** By a function of a library. */
    public long nearest(double number) {
        return Math.round(number);
    }

    /** By a cast. */
    public long cut(double number) {
        return (long) number;
    }
}
