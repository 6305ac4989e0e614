package icequill.forecast;

import icequill.forecast.stops.CountDistribution;
import icequill.money.Shares;
import java.math.BigDecimal;
import java.util.List;

/**
 * Ten sites like the customer's, by their calls: the chances of none, of one and of more, as tenths that add up (largest remainder,
 * ties to fewer calls).
 */
public record ChancesPerTenSites(int none, int one, int more) {

    private static final BigDecimal TEN = BigDecimal.TEN;

    /** Of the calls of one site. */
    public static ChancesPerTenSites of(CountDistribution calls) {
        List<BigDecimal> sites = Shares.byLargestRemainder(TEN,
                List.of(new BigDecimal(calls.chance(0)), new BigDecimal(calls.chance(1)),
                        new BigDecimal(calls.chanceOfMoreThan(1))),
                0);
        return new ChancesPerTenSites(sites.get(0).intValueExact(), sites.get(1).intValueExact(),
                sites.get(2).intValueExact());
    }
}
