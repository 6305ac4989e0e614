package icequill.forecast;

import icequill.money.Exact;
import icequill.money.Rounding;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/** Chances, counts and lengths of time as decimals for readers, and money that is expected as whole minor units. */
public final class Decimals {

    private Decimals() {
    }

    /** To so many decimals, halves away from zero. */
    public static BigDecimal of(double value, int decimals) {
        return Rounding.halfUp(BigFraction.from(value), decimals);
    }

    /** The highest number of so many decimals that is not above the value. */
    public static BigDecimal down(double value, int decimals) {
        return up(-value, decimals).negate();
    }

    /** The lowest number of so many decimals that is not below the value. */
    public static BigDecimal up(double value, int decimals) {
        BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
        return Rounding.halfUp(Exact.upToMultiple(BigFraction.from(value), step), decimals);
    }

    /** A mean or a spread of minor units, rounded half up to whole ones ({@link Rounding#EXPECTED}). */
    public static long minorUnits(double expected) {
        return Rounding.EXPECTED.wholeMinor(BigFraction.from(expected));
    }
}
