package icequill.answer;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.Forecast;
import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.SiteHistory;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.money.Amounts;
import icequill.outlook.CareOption;
import icequill.outlook.GuessDoubt;
import icequill.outlook.NonCashAssembly;
import icequill.outlook.OwnCostsAhead;
import icequill.outlook.SiteForecast;
import icequill.plans.ExpectedCharges;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.money.MonetaryAmount;
import org.jspecify.annotations.Nullable;

/** A forecast as data for other programs: every figure, and what it was figured from. Nothing of what the shop earns is in it. */
record ForecastJson(SiteForecast forecast) {

    private static final List<Integer> YEARS = List.of(1, 3, 5);
    private static final double LOW = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double HIGH = 0.9;
    private static final double MONTHS = 12;
    private static final int CHANCE_DIGITS = 6;
    private static final int MOST_CALLS = 12;

    /** The keys {@code currency}, {@code years}, {@code options} and {@code inputs}. */
    Map<String, Object> view() {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("currency", forecast.currency().getCurrencyCode());
        view.put("years", forecast.years());
        view.put("options", options());
        view.put("electricitySaved", electricity());
        view.put("doubt", doubt());
        view.put("ownCosts", ownCosts());
        view.put("inputs", inputs());
        return view;
    }

    /** The weights of the three sets of guesses, and last year's calls beside the usual one. */
    private Map<String, Object> doubt() {
        GuessDoubt doubt = new GuessDoubt(forecast);
        List<GuessDoubt.Likely> weights = doubt.weights();
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("careful", chance(weights.get(0).weight()));
        view.put("usual", chance(weights.get(1).weight()));
        view.put("gloomy", chance(weights.get(2).weight()));
        view.put("callsLastYear", doubt.record().map(GuessDoubt.LastYearsCalls::had).orElse(null));
        view.put("expectedLastYear", doubt.record().map(found -> chance(found.expected())).orElse(null));
        return view;
    }

    /** For the low, the middle and the high guess of what a year's dirt does; null where no machine has such a condenser. */
    private @Nullable Map<String, Object> electricity() {
        List<MonetaryAmount> saved = new NonCashAssembly(forecast).electricity();
        if (saved.isEmpty()) {
            return null;
        }
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("low", number(saved.get(0)));
        view.put("middle", number(saved.get(1)));
        view.put("high", number(saved.get(2)));
        return view;
    }

    /** Beside the cash: what a stop costs the customer by his own figures; null where he did not say. */
    private @Nullable Map<String, Object> ownCosts() {
        OwnCostsAhead ahead = new OwnCostsAhead(forecast);
        return forecast.hand().history().ownCosts().map(own -> {
            Map<String, Object> view = new LinkedHashMap<>();
            view.put("iceBought", number(own.iceBought()));
            view.put("spoiledTrade", number(own.spoiledTrade()));
            view.put("emergencyPremium", number(own.emergencyPremium()));
            view.put("secondTrip", number(own.secondTrip()));
            view.put("aStop", number(ahead.aStop().orElseThrow()));
            Map<String, Object> years = new LinkedHashMap<>();
            forecast.ways().forEach(way -> years.put(way.key(), two("ownCosts",
                    number(ahead.ofFirstYear(way).orElseThrow()), "withThem",
                    number(ahead.firstYear(way).orElseThrow()))));
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
        view.put("plannedPrice", number(way.planned()));
        view.put("catchingUp", number(way.catchUp().price()));
        view.put("includedCalls", way.included());
        view.putAll(figures(forecast.forecast(way, 1)));
        view.put("chanceCheaperThanPayPerCall", cheaper(way, forecast.payPerCall()));
        view.put("chanceCheaperThanBookedSingly", cheaper(way, forecast.bookedSingly()));
        Map<String, Object> horizon = new LinkedHashMap<>();
        horizon.put("years", forecast.years());
        Forecast over = forecast.forecast(way, forecast.years());
        horizon.put("plannedPrice", number(forecast.amount(over.planned())));
        horizon.putAll(figures(over));
        horizon.put("chanceCheaperThanPayPerCall", forecast
                .chanceCheaper(way, forecast.payPerCall(), forecast.years()).map(ForecastJson::chance).orElse(null));
        horizon.put("chanceCheaperThanBookedSingly", forecast
                .chanceCheaper(way, forecast.bookedSingly(), forecast.years()).map(ForecastJson::chance).orElse(null));
        view.put("horizon", horizon);
        return view;
    }

    /** Months of the longest horizon asked for on which a calendar cleans. */
    private List<BigDecimal> months(CleaningSchedule care) {
        int years = Math.max(YEARS.getLast(), forecast.years());
        return care.until(MONTHS * years).stream().map(ForecastJson::chance).toList();
    }

    private Map<String, Object> figures(Forecast found) {
        Map<String, Object> view = new LinkedHashMap<>();
        CountDistribution calls = found.calls();
        view.put("expectedCalls", chance(calls.mean()));
        view.put("callsByCause", byCause(found));
        view.put("chanceOfNoCall", chance(calls.chance(0)));
        view.put("chancesOfCalls", IntStream.rangeClosed(0, Math.min(MOST_CALLS, calls.most()))
                .mapToObj(n -> chance(calls.chance(n))).toList());
        view.put("charges", law(found.charges()));
        view.put("total", law(found.total()));
        return view;
    }

    private static Map<String, Object> byCause(Forecast found) {
        Map<String, Object> view = new LinkedHashMap<>();
        for (Cause cause : Cause.values()) {
            view.put(ConstantKey.of(cause), chance(found.calls(cause).mean()));
        }
        return view;
    }

    private Map<String, Object> law(MixedDistribution law) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("mean", number(forecast.amount(law.mean())));
        view.put("sd", number(forecast.amount(law.deviation())));
        view.put("p10", number(forecast.quantile(law, LOW)));
        view.put("p50", number(forecast.quantile(law, MIDDLE)));
        view.put("p90", number(forecast.quantile(law, HIGH)));
        view.put("latticeStep", number(forecast.amount(law.step())));
        return view;
    }

    private @Nullable Map<String, Object> cheaper(CareOption way, CareOption rival) {
        if (way.equals(rival)) {
            return null;
        }
        Map<String, Object> view = new LinkedHashMap<>();
        YEARS.forEach(years -> view.put(String.valueOf(years),
                chance(forecast.chanceCheaper(way, rival, years).orElseThrow())));
        return view;
    }

    private Map<String, Object> inputs() {
        ForecastRates rates = forecast.rates();
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("randomFaults", guess(rates.faults()));
        view.put("condenser", dirt(rates.condenser()));
        view.put("water", dirt(rates.water()));
        Map<String, Object> factors = new LinkedHashMap<>();
        rates.factors().of(forecast.risks().site()).forEach(factor -> factors.put(ConstantKey.of(factor.kind()),
                two("condenser", factor.speed().condenser(), "water", factor.speed().water())));
        view.put("siteFactors", factors);
        Map<String, Object> seasons = new LinkedHashMap<>();
        List.of(Cause.values()).forEach(
                cause -> seasons.put(ConstantKey.of(cause), rates.seasons().of(cause).orElse(null)));
        view.put("seasons", seasons);
        view.put("restores", two("cleaning", rates.cleaningRestores().value(), "brushing",
                rates.brushingRestores().value()));
        view.put("callsThatClean", rates.callsThatClean().value());
        view.put("sitesDiffer", guess(rates.sitesDiffer()));
        view.put("laterYears",
                two("prices", rates.later().prices().value(), "money", rates.later().money().value()));
        view.put("machines", forecast.risks().since().stream().map(this::machine).toList());
        view.put("calls", forecast.ways().stream().collect(LinkedHashMap::new,
                (all, way) -> all.put(way.key(), way.charges().kinds().stream().map(this::kind).toList()),
                Map::putAll));
        NonCashEffects beside = rates.beside();
        view.put("iceUsed", guess(beside.iceUsed()));
        view.put("electricity", known(beside.electricity()));
        Map<String, Object> bag = two("price", number(beside.bag().price()), "pounds", beside.bag().pounds());
        bag.put("origin", origin(beside.bag().origin()));
        view.put("bag", bag);
        view.put("hoursDown", beside.hoursDown());
        view.put("newMachine", known(beside.machine()));
        Map<String, Object> lives = two("cleaned", beside.lives().cleaned(), "neglected", beside.lives().neglected());
        lives.put("origin", origin(beside.lives().origin()));
        view.put("lives", lives);
        view.put("interest", beside.interest().value());
        return view;
    }

    /** Two keys in this order; those of other maps come in another with each run of the program. */
    private static Map<String, Object> two(String first, Object one, String second, Object other) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put(first, one);
        view.put(second, other);
        return view;
    }

    private Map<String, Object> machine(SiteRisks.Since since) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("machine", since.machine().id());
        view.put("lastCleaned", since.cleaned().map(String::valueOf).orElse(null));
        since(view, "monthsSinceCleaned", "monthsOfDirtInWater", forecast.risks().care(since, Cause.WATER));
        if (SiteRisks.isBrushed(since.machine())) {
            view.put("lastBrushed", since.brushed().map(String::valueOf).orElse(null));
            since(view, "monthsSinceBrushed", "monthsOfDirtOnCondenser",
                    forecast.risks().care(since, Cause.CONDENSER));
            view.put("nameplate", forecast.risks().history().of(since.machine().id())
                    .flatMap(SiteHistory.Care::nameplate).orElse(null));
        }
        return view;
    }

    /** Where the last work did not take all dirt away, it is older than that work. */
    private void since(Map<String, Object> view, String since, String dirt, SideCare care) {
        view.put(since, chance(care.sinceLast(forecast.risks().day())));
        view.put(dirt, chance(care.after(forecast.risks().day())));
    }

    private Map<String, Object> kind(ExpectedCharges.PricedKind kind) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("cause", ConstantKey.of(kind.cause()));
        view.put("name", kind.name().english());
        view.put("share", chance(kind.share()));
        view.put("cleans", kind.cleans());
        view.put("charge", number(kind.priced().net()));
        return view;
    }

    private static Map<String, Object> guess(Estimate guess) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("usual", guess.usual());
        view.put("low", guess.low());
        view.put("high", guess.high());
        view.put("origin", origin(guess.origin()));
        return view;
    }

    private static Map<String, Object> dirt(FoulingEstimate dirt) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("of", FoulingEstimate.Stops.OF);
        view.put("usual", stops(dirt.usual()));
        view.put("low", stops(dirt.low()));
        view.put("high", stops(dirt.high()));
        view.put("origin", origin(dirt.origin()));
        return view;
    }

    private static Map<String, Object> stops(FoulingEstimate.Stops stops) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("by6", stops.bySix());
        view.put("by12", stops.byTwelve());
        return view;
    }

    private static Map<String, Object> known(NonCashEffects.Known known) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("price", number(known.price()));
        view.put("origin", origin(known.origin()));
        return view;
    }

    private static String origin(Origin origin) {
        return switch (origin.kind()) {
        case ESTIMATE -> "our estimate";
        case CUSTOMER -> "the customer's";
        case VISITS -> "from " + origin.number() + " visits";
        case RUNS -> "from " + origin.number() + " runs";
        };
    }

    /** With at least the currency's decimals. */
    private static BigDecimal number(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }

    /** Rounded to six decimals. */
    private static BigDecimal chance(double value) {
        return Decimals.of(value, CHANCE_DIGITS);
    }
}
