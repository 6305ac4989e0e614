package icequill.work;

import icequill.money.Exact;
import java.math.BigDecimal;

/**
 * How much of something.
 *
 * @param number held without trailing zeros
 */
public record Quantity(BigDecimal number, Unit unit) {

    public Quantity {
        number = Exact.normal(number);
    }

    public static Quantity of(long number, Unit unit) {
        return new Quantity(BigDecimal.valueOf(number), unit);
    }
}
