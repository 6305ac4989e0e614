package icequill.forecast.inputs;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Rounding;
import java.math.BigDecimal;
import javax.money.MonetaryAmount;

/**
 * What a stop costs a customer by his own figures, besides what the shop charges for it. Never part of a price.
 *
 * @param iceBought what ice in place of the machine's costs in a day
 * @param spoiledTrade what is lost in goods and sales, a stop
 * @param emergencyPremium what he pays others to help at once, a stop
 * @param secondTrip what waiting for a part and another trip costs him on average, a stop
 */
public record OwnCosts(MonetaryAmount iceBought, MonetaryAmount spoiledTrade, MonetaryAmount emergencyPremium,
        MonetaryAmount secondTrip) {

    private static final int HOURS = 24;

    /**
     * All of it for one stop, rounded once.
     *
     * @param hours without ice
     */
    public Explanation aStop(BigDecimal hours) {
        Figure ice = Figure.price(iceBought, "day").times(Figure.term(hours, "h"))
                .over(Figure.term(HOURS, "h/day"));
        Figure all = ice.plus(Figure.price(spoiledTrade, "")).plus(Figure.price(emergencyPremium, ""))
                .plus(Figure.price(secondTrip, ""));
        return Explanation.of(all.rounded(Rounding.EXPECTED, iceBought.getCurrency()));
    }
}
