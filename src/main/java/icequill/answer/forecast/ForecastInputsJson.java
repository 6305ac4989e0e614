package icequill.answer.forecast;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.Decimals;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.SiteHistory;
import icequill.money.Amounts;
import icequill.outlook.SiteForecast;
import icequill.plans.ExpectedCharges;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** What a forecast was figured from, as data for other programs. */
public record ForecastInputsJson(SiteForecast forecast) {

    private static final int DIGITS = 6;

    public Map<String, Object> view() {
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
        view.put(since, sixDecimals(care.sinceLast(forecast.risks().day())));
        view.put(dirt, sixDecimals(care.after(forecast.risks().day())));
    }

    private Map<String, Object> kind(ExpectedCharges.PricedKind kind) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("cause", ConstantKey.of(kind.cause()));
        view.put("name", kind.name().english());
        view.put("share", sixDecimals(kind.share()));
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

    /** Two keys in this order; those of other maps come in another with each run of the program. */
    static Map<String, Object> two(String first, Object one, String second, Object other) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put(first, one);
        view.put(second, other);
        return view;
    }

    /** With at least the currency's decimals. */
    static BigDecimal number(MonetaryAmount amount) {
        return new BigDecimal(Amounts.plain(amount));
    }

    /** Rounded to six decimals. */
    static BigDecimal sixDecimals(double value) {
        return Decimals.of(value, DIGITS);
    }
}
