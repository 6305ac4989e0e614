package icequill.rates;

import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What somebody pays who settles claims under a warranty.
 *
 * @param name as machines name him
 * @param hourly of labor; empty where he pays the shop's own price
 * @param mostMinutes of labor on one visit; empty for any
 * @param sendDays from the visit to the last day to claim
 * @param returnDays from the visit to the last day to return what failed; empty where it is not asked for
 */
public record WarrantyPayer(String name, Optional<MonetaryAmount> hourly, Optional<Integer> mostMinutes, int sendDays,
        Optional<Integer> returnDays) {}
