package icequill.forecast.inputs;

import icequill.money.Percent;

/**
 * How amounts of later years are counted.
 *
 * @param prices by how much they rise a year
 * @param money by how much less an amount counts for each year that it is later
 */
public record LaterYears(Percent prices, Percent money) {

    /** Today's prices in every year, none worth less for being later. */
    public static final LaterYears LIKE_TODAY = new LaterYears(Percent.ZERO, Percent.ZERO);

    public boolean isLikeToday() {
        return prices.isZero() && money.isZero();
    }
}
