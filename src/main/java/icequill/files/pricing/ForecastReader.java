package icequill.files.pricing;

import icequill.explain.ConstantKey;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.forecast.Cause;
import icequill.forecast.inputs.Estimate;
import icequill.forecast.inputs.ExpectedCall;
import icequill.forecast.inputs.ExpectedCalls;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.FoulingEstimate;
import icequill.forecast.inputs.LaterYears;
import icequill.forecast.inputs.NonCashEffects;
import icequill.forecast.inputs.Origin;
import icequill.forecast.inputs.SiteFactors;
import icequill.forecast.inputs.StopSeasons;
import icequill.money.Percent;
import icequill.party.SiteKinds;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.work.ChargeClass;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;

/**
 * Makes what a forecast goes by from a file of kind forecast.
 *
 * @param known what the other files name
 * @param kinds of sites that there are
 */
record ForecastReader(Fields fields, CurrencyUnit currency, TiersReader.Known known, SiteKinds kinds) {

    private static final int HUNDRED = 100;
    private static final int MOST_DIFFERENCE = 75;
    private static final BigDecimal UNKNOWN_MONTHS = BigDecimal.valueOf(12);
    private static final int YEARS = 3;
    private static final BigDecimal ROUND_TO = BigDecimal.valueOf(50);

    /** Empty when something needed is missing or wrong, which is then reported. */
    Optional<ForecastRates> read() {
        Optional<Estimate> faults = EstimateReader.guess(fields, "randomFaults", Origin.ESTIMATE);
        Optional<FoulingEstimate> condenser = EstimateReader.dirt(fields, "condenser", Origin.ESTIMATE);
        Optional<FoulingEstimate> water = EstimateReader.dirt(fields, "water", Origin.ESTIMATE);
        Optional<NonCashEffects> beside = fields.child("beside").flatMap(this::beside);
        Optional<ForecastRates.Calls> calls = fields.child("calls").flatMap(this::calls);
        if (faults.isEmpty() || condenser.isEmpty() || water.isEmpty() || beside.isEmpty() || calls.isEmpty()) {
            return Optional.empty();
        }
        Optional<Fields> restores = fields.child("restores");
        return Optional.of(new ForecastRates(faults.get(), condenser.get(), water.get(), byKind(), factors(), seasons(),
                restored(restores, "cleaning"), restored(restores, "brushing"),
                callsThatClean(), sitesDiffer(),
                fields.number("unknownMonths").filter(months -> months.signum() >= 0).orElse(UNKNOWN_MONTHS),
                fields.integer("years").filter(years -> years > 0).orElse(YEARS), later(),
                fields.number("roundTo").filter(step -> step.signum() > 0).orElse(ROUND_TO), calls.get(), beside.get(),
                fields.place("kind")));
    }

    private StopSeasons seasons() {
        Map<Cause, List<BigDecimal>> seasons = new EnumMap<>(Cause.class);
        fields.child("seasons").ifPresent(entry -> Stream.of(Cause.values()).forEach(cause -> {
            String key = ConstantKey.of(cause);
            List<BigDecimal> quarters = entry.numbers(key);
            if (StopSeasons.areSound(quarters)) {
                seasons.put(cause, quarters);
            } else if (!quarters.isEmpty()) {
                fields.problems().add(Code.NOT_ALLOWED, entry.place(key), "quarters that count " + quarters,
                        "four factors above 0 that add up to 4, January to March first");
            }
        }));
        return new StopSeasons(seasons);
    }

    private Map<String, ForecastRates.KindDirt> byKind() {
        Map<String, ForecastRates.KindDirt> byKind = new LinkedHashMap<>();
        fields.child("byKind").ifPresent(all -> all.branch().keys().forEach((id, place) -> fields.problems()
                .take(kinds.named(id, place)).flatMap(kind -> all.child(id))
                .ifPresent(entry -> byKind.put(id, new ForecastRates.KindDirt(
                        EstimateReader.dirt(entry, "condenser", Origin.ESTIMATE),
                        EstimateReader.dirt(entry, "water", Origin.ESTIMATE))))));
        return byKind;
    }

    private LaterYears later() {
        return fields.child("laterYears").map(entry -> new LaterYears(
                entry.percent("prices", HUNDRED).orElse(Percent.ZERO),
                entry.percent("money", HUNDRED).orElse(Percent.ZERO))).orElse(LaterYears.LIKE_TODAY);
    }

    private enum AfterCall {
        RESETS, RESTARTS
    }

    /** All or none in a word, or a percentage. */
    private Percent callsThatClean() {
        Optional<AfterCall> word = fields.constant("afterCall", AfterCall.class);
        Optional<Percent> part = fields.percent("callsThatClean", HUNDRED);
        if (word.isPresent() && part.isPresent()) {
            fields.problems().add(Code.NOT_ALLOWED, fields.place("callsThatClean"), "afterCall stands here too",
                    "one of the two");
        }
        return part.orElse(word.filter(AfterCall.RESTARTS::equals).isPresent() ? Percent.ZERO : Percent.HUNDRED);
    }

    private Estimate sitesDiffer() {
        return EstimateReader.guess(fields, "sitesDiffer", Origin.ESTIMATE)
                .filter(percent -> percent.high().compareTo(BigDecimal.valueOf(MOST_DIFFERENCE)) <= 0)
                .orElse(ForecastRates.SITES_ALIKE);
    }

    private static Percent restored(Optional<Fields> restores, String key) {
        return restores.flatMap(entry -> entry.percent(key, HUNDRED)).filter(part -> !part.isZero())
                .orElse(Percent.HUNDRED);
    }

    private SiteFactors factors() {
        Optional<Fields> all = fields.child("siteFactors");
        return new SiteFactors(speed(all, "yeast"), speed(all, "heat"), speed(all, "grease"), speed(all, "hardWater"),
                all.flatMap(entry -> entry.child("hardWater")).flatMap(entry -> entry.number("from"))
                        .orElse(BigDecimal.ZERO));
    }

    private static SiteFactors.Speed speed(Optional<Fields> all, String key) {
        return all.flatMap(entry -> entry.child(key))
                .flatMap(entry -> entry.number("condenser").filter(factor -> factor.signum() > 0)
                        .flatMap(condenser -> entry.number("water").filter(factor -> factor.signum() > 0)
                                .map(water -> new SiteFactors.Speed(condenser, water))))
                .orElse(SiteFactors.Speed.USUAL);
    }

    private Optional<ForecastRates.Calls> calls(Fields entry) {
        Optional<Fields> resets = fields.child("resetTasks");
        Optional<ExpectedCalls> random = kinds(entry, "random", List.of());
        Optional<ExpectedCalls> condenser = kinds(entry, "condenser", tasks(resets, "condenser"));
        Optional<ExpectedCalls> water = kinds(entry, "water", tasks(resets, "water"));
        return random.flatMap(one -> condenser
                .flatMap(two -> water.map(three -> new ForecastRates.Calls(one, two, three))));
    }

    private List<String> tasks(Optional<Fields> resets, String key) {
        List<Tree.Leaf> named = resets.map(entry -> entry.leaves(key)).orElse(List.of());
        named.stream().filter(leaf -> !known.tasks().isEmpty() && !known.tasks().contains(leaf.text()))
                .forEach(leaf -> fields.problems()
                        .add(Problem.unknownName(leaf.place(), "task", leaf.text(), known.tasks())));
        return named.stream().map(Tree.Leaf::text).toList();
    }

    /** The kinds of a cause; empty where their shares do not add up to 1, which is reported. */
    private Optional<ExpectedCalls> kinds(Fields calls, String cause, List<String> resets) {
        List<Fields> named = calls.children(cause);
        List<ExpectedCall> kinds = Names.list(named, this::kind);
        if (kinds.isEmpty() || kinds.size() < named.size()) {
            return Optional.empty();
        }
        BigDecimal sum = kinds.stream().map(ExpectedCall::share).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (sum.compareTo(BigDecimal.ONE) != 0) {
            fields.problems().add(Code.NOT_ALLOWED, calls.place(cause),
                    "the shares add up to " + sum.stripTrailingZeros().toPlainString(), "shares that add up to 1");
            return Optional.empty();
        }
        return Optional.of(new ExpectedCalls(kinds, resets));
    }

    private Optional<ExpectedCall> kind(String id, Fields entry) {
        Names.refer(entry, "band", "labor band", known.bands());
        List<ExpectedCall.Part> parts = entry.children("parts").stream().flatMap(part -> {
            Names.refer(part, "material", "material", known.materials());
            return part.id("material").flatMap(material -> part.number("amount")
                    .map(amount -> new ExpectedCall.Part(material, amount, part.place("material")))).stream();
        }).toList();
        return entry.wording("name").flatMap(name -> entry.number("share").filter(share -> share.signum() > 0)
                .flatMap(share -> entry.id("band").flatMap(band -> entry.integer("minutes")
                        .filter(minutes -> minutes > 0)
                        .flatMap(minutes -> entry.constant("on", ChargeClass.class).filter(ChargeClass::isLabor)
                                .map(on -> new ExpectedCall(id, name, share, band, minutes, on, parts,
                                        entry.place("id")))))));
    }

    private Optional<NonCashEffects> beside(Fields entry) {
        Origin ours = Origin.ESTIMATE;
        Optional<Estimate> ice = EstimateReader.guess(entry, "iceUsed", ours);
        Optional<NonCashEffects.Known> power = EstimateReader.price(entry, "electricity", currency, ours);
        Optional<NonCashEffects.Bag> bag = EstimateReader.bag(entry, currency, ours);
        Optional<BigDecimal> hours = entry.number("hoursDown");
        Optional<BigDecimal> water = entry.number("water");
        Optional<NonCashEffects.Known> machine = EstimateReader.price(entry, "newMachine", currency, ours);
        Optional<NonCashEffects.Lives> lives = EstimateReader.lives(entry, ours);
        Optional<Percent> interest = entry.percent("interest", HUNDRED);
        return Stream.of(ice, power, bag, hours, water, machine, lives, interest).allMatch(Optional::isPresent)
                ? Optional.of(new NonCashEffects(ice.orElseThrow(), power.orElseThrow(), bag.orElseThrow(),
                        hours.orElseThrow(), water.orElseThrow(), machine.orElseThrow(), lives.orElseThrow(),
                        interest.orElseThrow()))
                : Optional.empty();
    }
}
