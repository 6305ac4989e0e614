package icequill.life.refrigerant;

import icequill.money.Exact;
import icequill.money.Rounding;
import java.math.BigDecimal;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * The part of its full charge that a machine loses in a year.
 *
 * @param method by which it is figured; 40 CFR 82.152 knows the two (pages about it were read, and its text is from memory)
 * @param lost ounces
 * @param charge ounces when the machine is full, above zero
 * @param days over which they were lost, from 1 to 365: of {@link Method#ROLLING_AVERAGE} the days looked back over, which do not count
 */
public record LeakRate(Method method, BigDecimal lost, BigDecimal charge, int days) {

    /** The days of a year, as the rule counts them. */
    static final int YEAR = 365;
    private static final int DECIMALS = 2;
    private static final int HUNDRED = 100;

    /** How it is figured. */
    public enum Method {
        /** What was lost since the last addition, as if it went on so for a year. */
        ANNUALIZING,
        /** All that was lost within a year, or since all leaks were proved to be mended if that is less. */
        ROLLING_AVERAGE
    }

    /** In percent, rounded half up to two decimals; what is compared with a limit is not rounded. */
    public BigDecimal percent() {
        return Rounding.halfUp(exact(), DECIMALS);
    }

    /** Whether it is above a limit in percent. */
    public boolean isAbove(BigDecimal limit) {
        return exact().compareTo(Exact.of(limit)) > 0;
    }

    private BigFraction exact() {
        BigFraction part = Exact.of(lost).divide(Exact.of(charge)).multiply(HUNDRED);
        return method == Method.ANNUALIZING ? part.multiply(YEAR).divide(days) : part;
    }
}
