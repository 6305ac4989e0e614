package icequill.answer.forecast;

import icequill.explain.ConstantKey;
import icequill.forecast.Cause;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.outlook.SiteForecast;
import icequill.plans.ExpectedCharges;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a forecast was figured from. Percentages are of 100.
 *
 * @param randomFaults of one machine in a year that no cleaning prevents
 * @param condenser machines of so many that nobody brushes which stop, and {@code water} that nobody cleans
 * @param siteFactors how many times as fast dirt works there, by what makes it
 * @param seasons how many times as fast it works in each quarter, by cause; missing where no season is known
 * @param restores percent of the dirt that cleaning, or brushing, takes away
 * @param callsThatClean percent of the calls for dirt whose work cleans
 * @param sitesDiffer percent by which sites differ from each other
 * @param laterYears percent by which prices rise in a year, and what money of a later year is worth less
 * @param recorded what the shop's own visits say; missing where there were none
 * @param calls kinds of calls, by way of care
 * @param iceUsed percent of what the machines make
 * @param hoursDown that a stop lasts
 * @param lives of machines in years
 * @param interest percent a year
 */
public record ForecastInputs(Guess randomFaults, Dirt condenser, Dirt water, Map<String, Speed> siteFactors,
        Map<String, List<BigDecimal>> seasons, Restores restores, BigDecimal callsThatClean, Guess sitesDiffer,
        LaterYears laterYears, List<MachineAge> machines, Optional<RecordedCare> recorded,
        Map<String, List<CallKind>> calls, Guess iceUsed,
        Known electricity, Bag bag, BigDecimal hoursDown, Known newMachine, Lives lives, BigDecimal interest) {

    /** A value with the range in which it is believed to lie, and who says so. */
    public record Guess(BigDecimal usual, BigDecimal low, BigDecimal high, String origin) {
        public static Guess of(Estimate guess) {
            return new Guess(guess.usual(), guess.low(), guess.high(), said(guess.origin()));
        }
    }

    /** Of so many machines, how many stop; three guesses. */
    public record Dirt(int of, Stops usual, Stops low, Stops high, String origin) {
        public static Dirt of(FoulingEstimate dirt) {
            return new Dirt(FoulingEstimate.Stops.OF, Stops.of(dirt.usual()), Stops.of(dirt.low()),
                    Stops.of(dirt.high()), said(dirt.origin()));
        }
    }

    /** By month 6, and by month 12. */
    public record Stops(BigDecimal by6, BigDecimal by12) {
        private static Stops of(FoulingEstimate.Stops stops) {
            return new Stops(stops.bySix(), stops.byTwelve());
        }
    }

    /** On either side of a machine. */
    public record Speed(BigDecimal condenser, BigDecimal water) {}

    /** Percent. */
    public record Restores(BigDecimal cleaning, BigDecimal brushing) {}

    /** Percent a year. */
    public record LaterYears(BigDecimal prices, BigDecimal money) {}

    /** A kind of call: its share of the calls for its cause, whether its work cleans, and what it costs before tax. */
    public record CallKind(String cause, String name, BigDecimal share, boolean cleans, MonetaryAmount charge) {
        private static CallKind of(ExpectedCharges.PricedKind kind) {
            return new CallKind(ConstantKey.of(kind.cause()), kind.name().english(), SixDecimals.of(kind.share()),
                    kind.cleans(), kind.priced().net());
        }
    }

    /** A price, and who says so. */
    public record Known(MonetaryAmount price, String origin) {
        private static Known of(NonCashEffects.Known known) {
            return new Known(known.price(), said(known.origin()));
        }
    }

    /** A bag of bought ice. */
    public record Bag(MonetaryAmount price, BigDecimal pounds, String origin) {}

    /** Years that machines last, kept clean and not. */
    public record Lives(int cleaned, int neglected, String origin) {}

    static ForecastInputs of(SiteForecast forecast) {
        ForecastRates rates = forecast.rates();
        NonCashEffects beside = rates.beside();
        return new ForecastInputs(Guess.of(rates.faults()), Dirt.of(rates.condenser()), Dirt.of(rates.water()),
                factors(forecast), seasons(rates),
                new Restores(rates.cleaningRestores().value(), rates.brushingRestores().value()),
                rates.callsThatClean().value(), Guess.of(rates.sitesDiffer()),
                new LaterYears(rates.later().prices().value(), rates.later().money().value()),
                forecast.risks().since().stream().map(since -> MachineAge.of(forecast, since)).toList(),
                forecast.hand().history().book().map(RecordedCare::of),
                calls(forecast), Guess.of(beside.iceUsed()), Known.of(beside.electricity()),
                new Bag(beside.bag().price(), beside.bag().pounds(), said(beside.bag().origin())),
                beside.hoursDown(), Known.of(beside.machine()),
                new Lives(beside.lives().cleaned(), beside.lives().neglected(), said(beside.lives().origin())),
                beside.interest().value());
    }

    private static Map<String, Speed> factors(SiteForecast forecast) {
        Map<String, Speed> factors = new LinkedHashMap<>();
        forecast.rates().factors().of(forecast.risks().site())
                .forEach(factor -> factors.put(ConstantKey.of(factor.kind()),
                        new Speed(factor.speed().condenser(), factor.speed().water())));
        return factors;
    }

    private static Map<String, List<BigDecimal>> seasons(ForecastRates rates) {
        Map<String, List<BigDecimal>> seasons = new LinkedHashMap<>();
        List.of(Cause.values()).forEach(cause -> rates.seasons().of(cause)
                .ifPresent(quarters -> seasons.put(ConstantKey.of(cause), quarters)));
        return seasons;
    }

    private static Map<String, List<CallKind>> calls(SiteForecast forecast) {
        Map<String, List<CallKind>> calls = new LinkedHashMap<>();
        forecast.ways().forEach(
                way -> calls.put(way.key(), way.charges().kinds().stream().map(CallKind::of).toList()));
        return calls;
    }

    /** Who says something. */
    public static String said(Origin origin) {
        return switch (origin.kind()) {
        case ESTIMATE -> "our estimate";
        case CUSTOMER -> "the customer's";
        case VISITS -> "from " + origin.number() + " visits";
        case RUNS -> "from " + origin.number() + " runs";
        };
    }
}
