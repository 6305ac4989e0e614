package icequill.forecast.inputs;

import icequill.money.Percent;
import java.math.BigDecimal;
import javax.money.MonetaryAmount;

/**
 * What comes beside the cash of a choice, and is in none of its figures.
 *
 * @param iceUsed percent of what a machine could make that is used
 * @param electricity price of a kWh
 * @param bag of bought ice
 * @param hoursDown until a stopped machine makes ice again
 * @param water gallons taken for 100 lb of ice
 * @param machine price of another one, set up
 * @param interest percent a year
 */
public record NonCashEffects(Estimate iceUsed, Known electricity, Bag bag, BigDecimal hoursDown, BigDecimal water,
        Known machine, Lives lives,
        Percent interest) {

    /** A price, and who says so. */
    public record Known(MonetaryAmount price, Origin origin) {}

    /** A bag of bought ice. */
    public record Bag(MonetaryAmount price, BigDecimal pounds, Origin origin) {}

    /** Years that a machine lasts with and without care; more with it. */
    public record Lives(int cleaned, int neglected, Origin origin) {}
}
