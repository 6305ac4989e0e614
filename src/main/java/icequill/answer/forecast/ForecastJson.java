package icequill.answer.forecast;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.outlook.CareOption;
import icequill.outlook.EstimateWeights;
import icequill.outlook.NonCashAssembly;
import icequill.outlook.OwnCostsAhead;
import icequill.outlook.SiteForecast;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;

/** A forecast as data for other programs: every figure, and what it was figured from. Nothing of what the shop earns is in it. */
public record ForecastJson(SiteForecast forecast) {

    private static final List<Integer> YEARS = List.of(1, 3, 5);
    private static final double LOW = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double HIGH = 0.9;
    private static final double MONTHS = 12;
    private static final int MOST_CALLS = 12;

    /** The keys {@code currency}, {@code years}, {@code options} and {@code inputs}. */
    public Map<String, Object> view() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("currency", forecast.currency().getCurrencyCode());
        view.put("years", forecast.years());
        view.put("options", options());
        view.put("electricitySaved", electricity());
        view.put("doubt", doubt());
        view.put("ownCosts", ownCosts());
        view.put("inputs", new ForecastInputsJson(forecast).view());
        return view;
    }

    /** The weights of the three sets of guesses, and last year's calls beside the usual one. */
    private Map<String, Object> doubt() {
        EstimateWeights estimates = new EstimateWeights(forecast);
        List<EstimateWeights.Likely> weights = estimates.weights();
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("careful", ForecastInputsJson.sixDecimals(weights.get(0).weight()));
        view.put("usual", ForecastInputsJson.sixDecimals(weights.get(1).weight()));
        view.put("gloomy", ForecastInputsJson.sixDecimals(weights.get(2).weight()));
        view.put("callsLastYear", estimates.record().map(EstimateWeights.LastYearsCalls::had).orElse(null));
        view.put("expectedLastYear",
                estimates.record().map(found -> ForecastInputsJson.sixDecimals(found.expected())).orElse(null));
        return view;
    }

    /** For the low, the middle and the high guess of what a year's dirt does; null where no machine has such a condenser. */
    private @Nullable Map<String, Object> electricity() {
        List<MonetaryAmount> saved = new NonCashAssembly(forecast).electricity();
        if (saved.isEmpty()) {
            return null;
        }
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("low", ForecastInputsJson.number(saved.get(0)));
        view.put("middle", ForecastInputsJson.number(saved.get(1)));
        view.put("high", ForecastInputsJson.number(saved.get(2)));
        return view;
    }

    /** Beside the cash: what a stop costs the customer by his own figures; null where he did not say. */
    private @Nullable Map<String, Object> ownCosts() {
        OwnCostsAhead ahead = new OwnCostsAhead(forecast);
        return forecast.hand().history().ownCosts().map(own -> {
            Map<String, Object> view = new LinkedHashMap<>();
            view.put("iceBought", ForecastInputsJson.number(own.iceBought()));
            view.put("spoiledTrade", ForecastInputsJson.number(own.spoiledTrade()));
            view.put("emergencyPremium", ForecastInputsJson.number(own.emergencyPremium()));
            view.put("secondTrip", ForecastInputsJson.number(own.secondTrip()));
            view.put("aStop", ForecastInputsJson.number(ahead.aStop().orElseThrow()));
            Map<String, Object> years = new LinkedHashMap<>();
            forecast.ways().forEach(way -> years.put(way.key(), ForecastInputsJson.two("ownCosts",
                    ForecastInputsJson.number(ahead.ofFirstYear(way).orElseThrow()), "withThem",
                    ForecastInputsJson.number(ahead.firstYear(way).orElseThrow()))));
            view.put("firstYear", years);
            return view;
        }).orElse(null);
    }

    private Map<String, Object> options() {
        Map<String, Object> options = new LinkedHashMap<>();
        forecast.ways().forEach(way -> options.put(way.key(), option(way)));
        return options;
    }

    private Map<String, Object> option(CareOption way) {
        Map<String, Object> view = new LinkedHashMap<>();
        boolean brushed = forecast.risks().hasCondensers();
        view.put("kind", ConstantKey.of(way.kind()));
        view.put("monthsBetweenCleanings", way.care().cleaned().orElse(null));
        view.put("monthsBetweenBrushings", brushed ? way.care().brushed().orElse(null) : null);
        view.put("cleanings", months(way.care().water()));
        view.put("brushings", brushed ? months(way.care().condenser()) : List.of());
        view.put("plannedPrice", ForecastInputsJson.number(way.planned()));
        view.put("catchingUp", ForecastInputsJson.number(way.catchUp().price()));
        view.put("includedCalls", way.included());
        view.putAll(figures(forecast.forecast(way, 1)));
        view.put("chanceCheaperThanPayPerCall", cheaper(way, forecast.payPerCall()));
        view.put("chanceCheaperThanBookedSingly", cheaper(way, forecast.bookedSingly()));
        Map<String, Object> horizon = new LinkedHashMap<>();
        horizon.put("years", forecast.years());
        Forecast over = forecast.forecast(way, forecast.years());
        horizon.put("plannedPrice", ForecastInputsJson.number(forecast.amount(over.planned())));
        horizon.putAll(figures(over));
        horizon.put("chanceCheaperThanPayPerCall", forecast
                .chanceCheaper(way, forecast.payPerCall(), forecast.years()).map(ForecastInputsJson::sixDecimals)
                .orElse(null));
        horizon.put("chanceCheaperThanBookedSingly", forecast
                .chanceCheaper(way, forecast.bookedSingly(), forecast.years()).map(ForecastInputsJson::sixDecimals)
                .orElse(null));
        view.put("horizon", horizon);
        return view;
    }

    /** Months of the longest horizon asked for on which a calendar cleans. */
    private List<BigDecimal> months(CleaningSchedule care) {
        int years = Math.max(YEARS.getLast(), forecast.years());
        return care.until(MONTHS * years).stream().map(ForecastInputsJson::sixDecimals).toList();
    }

    private Map<String, Object> figures(Forecast found) {
        Map<String, Object> view = new LinkedHashMap<>();
        CountDistribution calls = found.calls();
        view.put("expectedCalls", ForecastInputsJson.sixDecimals(calls.mean()));
        view.put("callsByCause", byCause(found));
        view.put("chanceOfNoCall", ForecastInputsJson.sixDecimals(calls.chance(0)));
        view.put("chancesOfCalls", IntStream.rangeClosed(0, Math.min(MOST_CALLS, calls.most()))
                .mapToObj(n -> ForecastInputsJson.sixDecimals(calls.chance(n))).toList());
        view.put("charges", law(found.charges()));
        view.put("total", law(found.total()));
        return view;
    }

    private static Map<String, Object> byCause(Forecast found) {
        Map<String, Object> view = new LinkedHashMap<>();
        for (Cause cause : Cause.values()) {
            view.put(ConstantKey.of(cause), ForecastInputsJson.sixDecimals(found.calls(cause).mean()));
        }
        return view;
    }

    private Map<String, Object> law(MixedDistribution law) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("mean", ForecastInputsJson.number(forecast.amount(law.mean())));
        view.put("sd", ForecastInputsJson.number(forecast.amount(law.deviation())));
        view.put("p10", ForecastInputsJson.number(forecast.quantile(law, LOW)));
        view.put("p50", ForecastInputsJson.number(forecast.quantile(law, MIDDLE)));
        view.put("p90", ForecastInputsJson.number(forecast.quantile(law, HIGH)));
        view.put("latticeStep", ForecastInputsJson.number(forecast.amount(law.step())));
        return view;
    }

    private @Nullable Map<String, Object> cheaper(CareOption way, CareOption rival) {
        if (way.equals(rival)) {
            return null;
        }
        Map<String, Object> view = new LinkedHashMap<>();
        YEARS.forEach(years -> view.put(String.valueOf(years),
                ForecastInputsJson.sixDecimals(forecast.chanceCheaper(way, rival, years).orElseThrow())));
        return view;
    }
}
