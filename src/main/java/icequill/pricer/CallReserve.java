package icequill.pricer;

import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.MonetaryAmount;

/**
 * What a forecast expects of the calls that an agreement includes.
 *
 * @param expected calls in a year that are both made and included: the mean of the smaller of the two numbers
 * @param meanCharge what one of them would be charged on average; need not be whole minor units
 * @param meanCost what one costs the shop on average; the owner's alone
 */
public record CallReserve(BigDecimal expected, MonetaryAmount meanCharge, MonetaryAmount meanCost) {

    public CallReserve {
        Check.that(expected.signum() >= 0, "expected calls: " + expected);
    }
}
