package icequill.money;

import java.math.BigDecimal;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/** The roundings to a shop's price step, by name: prices such as 685 that are easy to remember. */
public enum Stepping {
    /** To the nearest full multiple of the step, halves away from zero. */
    NEAREST,
    /** To the highest full multiple that is not above the value. */
    DOWN,
    /** To the lowest full multiple that is not below the value. */
    UP;

    /** The multiple of the step, which must be positive. */
    public BigFraction to(BigFraction value, BigDecimal step) {
        BigFraction size = Exact.of(step);
        return switch (this) {
        case NEAREST -> size.multiply(Exact.of(Rounding.halfUp(value.divide(size), 0)));
        case UP -> Exact.upToMultiple(value, step);
        case DOWN -> Exact.upToMultiple(value.negate(), step).negate();
        };
    }

    /** The multiple of the step, which must be positive, as an amount. */
    public MonetaryAmount of(MonetaryAmount amount, BigDecimal step) {
        BigFraction multiple = to(Exact.of(Amounts.number(amount)), step);
        return Amounts.of(Rounding.halfUp(multiple, Math.max(0, step.scale())), amount.getCurrency());
    }
}
