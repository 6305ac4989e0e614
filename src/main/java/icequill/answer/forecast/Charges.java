package icequill.answer.forecast;

import icequill.forecast.charges.MixedDistribution;
import icequill.outlook.SiteForecast;
import javax.money.MonetaryAmount;

/**
 * What may be charged.
 *
 * @param sd the standard deviation
 * @param p10 at most so much comes in one year of ten, {@code p50} in five, {@code p90} in nine
 * @param latticeStep how finely it was figured
 */
public record Charges(MonetaryAmount mean, MonetaryAmount sd, MonetaryAmount p10, MonetaryAmount p50,
        MonetaryAmount p90, MonetaryAmount latticeStep) {

    private static final double LOW = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double HIGH = 0.9;

    static Charges of(SiteForecast forecast, MixedDistribution law) {
        return new Charges(forecast.amount(law.mean()), forecast.amount(law.deviation()), forecast.quantile(law, LOW),
                forecast.quantile(law, MIDDLE), forecast.quantile(law, HIGH), forecast.amount(law.step()));
    }
}
