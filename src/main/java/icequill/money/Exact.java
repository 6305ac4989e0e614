package icequill.money;

import java.math.BigDecimal;
import java.math.BigInteger;
import org.apache.commons.numbers.fraction.BigFraction;

/** Exact arithmetic on decimals: fractions, so that nothing is lost before a named rounding. */
public final class Exact {

    private Exact() {
    }

    public static BigFraction of(BigDecimal number) {
        return number.scale() <= 0
                ? BigFraction.of(number.toBigIntegerExact())
                : BigFraction.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()));
    }

    /** The smallest multiple of the step that is not below the value; the step must be positive. */
    public static BigFraction upToMultiple(BigFraction value, BigDecimal step) {
        BigFraction size = of(step);
        return size.multiply(ceiling(value.divide(size)));
    }

    /** The same number without trailing zeros and without an exponent, so that equal numbers are equal objects. */
    public static BigDecimal normal(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static BigInteger ceiling(BigFraction value) {
        BigInteger[] parts = value.getNumerator().divideAndRemainder(value.getDenominator());
        return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
    }
}
