package icequill.answer.forecast;

import icequill.outlook.CareOption;
import icequill.outlook.EstimateWeights;
import icequill.outlook.NonCashAssembly;
import icequill.outlook.OwnCostsAhead;
import icequill.outlook.SiteForecast;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * A forecast: every figure, and what it was figured from. Amounts are before tax. Nothing of what the shop earns is in it.
 *
 * @param years that are looked ahead
 * @param options ways of care, by payPerCall, bookedSingly, the ids of plans, and everyKMonths
 * @param electricitySaved by a year's brushing; missing where no machine has such a condenser
 * @param ownCosts what stops cost the customer besides, by his own figures; missing where he did not say
 */
public record ForecastFigures(CurrencyUnit currency, int years, Map<String, CareFigures> options,
        Optional<Range> electricitySaved, Doubt doubt, Optional<OwnCosts> ownCosts, ForecastInputs inputs) {

    /** For the low, the middle and the high guess. */
    public record Range(MonetaryAmount low, MonetaryAmount middle, MonetaryAmount high) {}

    /**
     * The weights of the three sets of guesses, which add up to 1, and last year's calls beside the usual one.
     *
     * @param callsLastYear that came, and {@code expectedLastYear} by the usual guess; missing where there is no record
     */
    public record Doubt(BigDecimal careful, BigDecimal usual, BigDecimal gloomy, Optional<Integer> callsLastYear,
            Optional<BigDecimal> expectedLastYear) {}

    /**
     * What a stop costs the customer himself.
     *
     * @param aStop all of it
     * @param firstYear by way of care
     */
    public record OwnCosts(MonetaryAmount iceBought, MonetaryAmount spoiledTrade, MonetaryAmount emergencyPremium,
            MonetaryAmount secondTrip, MonetaryAmount aStop, Map<String, OwnYear> firstYear) {}

    /** His own costs of a year, and the year with them. */
    public record OwnYear(MonetaryAmount ownCosts, MonetaryAmount withThem) {}

    public ForecastFigures {
        options = new LinkedHashMap<>(options);
    }

    public static ForecastFigures of(SiteForecast forecast) {
        Map<String, CareFigures> options = new LinkedHashMap<>();
        forecast.ways().forEach(way -> options.put(way.key(), CareFigures.of(forecast, way)));
        return new ForecastFigures(forecast.currency(), forecast.years(), options, electricity(forecast),
                doubt(forecast), own(forecast), ForecastInputs.of(forecast));
    }

    private static Doubt doubt(SiteForecast forecast) {
        EstimateWeights estimates = new EstimateWeights(forecast);
        List<BigDecimal> weights = estimates.weights().stream().map(likely -> SixDecimals.of(likely.weight())).toList();
        return new Doubt(weights.get(0), weights.get(1), weights.get(2),
                estimates.record().map(EstimateWeights.LastYearsCalls::had),
                estimates.record().map(found -> SixDecimals.of(found.expected())));
    }

    private static Optional<Range> electricity(SiteForecast forecast) {
        List<MonetaryAmount> saved = new NonCashAssembly(forecast).electricity();
        return saved.isEmpty() ? Optional.empty() : Optional.of(new Range(saved.get(0), saved.get(1), saved.get(2)));
    }

    private static Optional<OwnCosts> own(SiteForecast forecast) {
        OwnCostsAhead ahead = new OwnCostsAhead(forecast);
        return forecast.hand().history().ownCosts().map(own -> {
            Map<String, OwnYear> years = new LinkedHashMap<>();
            for (CareOption way : forecast.ways()) {
                years.put(way.key(),
                        new OwnYear(ahead.ofFirstYear(way).orElseThrow(), ahead.firstYear(way).orElseThrow()));
            }
            return new OwnCosts(own.iceBought(), own.spoiledTrade(), own.emergencyPremium(), own.secondTrip(),
                    ahead.aStop().orElseThrow(), years);
        });
    }
}
