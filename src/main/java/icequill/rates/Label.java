package icequill.rates;

import icequill.work.Chemistry;
import icequill.work.Unit;
import java.math.BigDecimal;

/**
 * What the label of a cleaner or sanitizer says.
 *
 * @param most of it, in the material's unit, in one unit of water
 * @param per the unit of water
 */
public record Label(Chemistry chemistry, BigDecimal most, Unit per) {

    /** The most that may go into so much water. */
    public BigDecimal most(BigDecimal water) {
        return most.multiply(water);
    }
}
