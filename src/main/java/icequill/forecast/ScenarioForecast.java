package icequill.forecast;

import icequill.forecast.charges.ChargeDistribution;
import icequill.forecast.charges.ChargePart;
import icequill.forecast.charges.Difference;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.Season;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import icequill.forecast.stops.Stretches;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.analysis.solvers.BrentSolver;

/** What a choice leads to when it is known how bad the site is, so that its machines do not depend on each other. */
final class ScenarioForecast {

    private static final double YEAR = 12;
    /** Below it a rest of a year is what rounding left. */
    private static final double NOTHING = 1e-9;

    /** Months by which an age may be off. */
    private static final double SAME_AGE = 1e-9;
    private static final int MOST_STEPS = 200;

    private final MaintenancePolicy choice;
    private final double months;
    private final Map<Cause, CountDistribution> counts;
    private final YearlyCharges charged;
    /** Calls that are not included in what is planned; all of them where none is. */
    private final CountDistribution paid;
    private final ChargeDistribution dirt;
    private final ChargeDistribution charges;
    /** Those of the horizon where calls are included; none otherwise. */
    private final List<Year> years;

    private ScenarioForecast(MaintenancePolicy choice, double months, Map<Cause, CountDistribution> counts,
            YearlyCharges charged, List<Year> years) {
        this.years = years;
        this.paid = years.stream().map(year -> year.calls().beyond(choice.included())).reduce(CountDistribution.NONE,
                CountDistribution::plus);
        this.choice = choice;
        this.months = months;
        this.counts = counts;
        this.charged = charged;
        this.dirt = ChargeDistribution.of(List.of(part(Cause.CONDENSER), part(Cause.WATER)));
        this.charges = ChargeDistribution.of(paidParts());
    }

    /** As {@link Forecast#of(List, MaintenancePolicy, StopPolicy, double, PriceTerms)}, but for what the policy says of machines together. */
    static ScenarioForecast of(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months,
            PriceTerms terms) {
        List<Side> condensers = machines.stream().flatMap(machine -> Side.condenser(machine).stream()).toList();
        List<Side> waters = machines.stream().map(Side::water).toList();
        DoubleUnaryOperator random = until -> machines.stream().mapToDouble(machine -> machine.randomUntil(until))
                .sum();
        YearlyCharges charged = YearlyCharges.of(terms, months, Map.of(Cause.RANDOM, random,
                Cause.CONDENSER, until -> sum(condensers, policy, until, choice.condenser()).mean(), Cause.WATER,
                until -> sum(waters, policy, until, choice.water()).mean()));
        Map<Cause, CountDistribution> counts = new EnumMap<>(Cause.class);
        counts.put(Cause.RANDOM, CountDistribution.poisson(random.applyAsDouble(months)));
        counts.put(Cause.CONDENSER, sum(condensers, policy, months, choice.condenser()));
        counts.put(Cause.WATER, sum(waters, policy, months, choice.water()));
        List<Year> years = new ArrayList<>();
        for (double from = 0; choice.included() > 0 && from < months - NOTHING; from += YEAR) {
            double begins = from;
            double until = Math.min(months, from + YEAR);
            years.add(new Year(month -> random.applyAsDouble(begins + month) - random.applyAsDouble(begins),
                    begun(condensers, choice.condenser(), policy, from, until), choice.condenser().within(from, until),
                    begun(waters, choice.water(), policy, from, until), choice.water().within(from, until), policy,
                    until - from));
        }
        return new ScenarioForecast(choice, months, counts, charged, years);
    }

    /** A problem for each side that would stop so often that a figure must be wrong. */
    static List<Problem> problems(List<MachineRisk> machines, CleaningSchedule water, CleaningSchedule condenser,
            StopPolicy policy,
            double months, Place place) {
        Problems problems = new Problems();
        for (MachineRisk machine : machines) {
            Side.condenser(machine)
                    .ifPresent(side -> check("condenser", condenser, side, policy, months, place, problems));
            check("water side", water, Side.water(machine), policy, months, place, problems);
        }
        return problems.list();
    }

    private static void check(String what, CleaningSchedule care, Side side, StopPolicy policy, double months,
            Place place,
            Problems problems) {
        if (StopCounts.isAbsurd(side.clock(), policy, side.age(), Stretches.of(care, side.season(), months))) {
            problems.add(Code.NOT_ALLOWED, place,
                    "a " + what + " with a clock of " + side.clock().scale()
                            + " months would stop hundreds of times in "
                            + months + " months",
                    "a slower clock, a shorter horizon, or calls that clean the side they are for");
        }
    }

    /** One side of a machine: the clock it runs by, its age, and how its months count. */
    private record Side(FoulingLife clock, double age, Season season) {

        static Optional<Side> condenser(MachineRisk machine) {
            return machine.condenser()
                    .map(clock -> new Side(clock, machine.monthsSinceBrushed(), machine.seasons().condenser()));
        }

        static Side water(MachineRisk machine) {
            return new Side(machine.water(), machine.monthsSinceCleaned(), machine.seasons().water());
        }
    }

    /** Of sides that run alike. */
    private record Alike(FoulingLife clock, Season season) {}

    /** Calls of one kind, as many times over as machines have them alike. */
    private record Source(Cause cause, int number, DoubleFunction<CountDistribution> until) {}

    /**
     * A year of a horizon.
     *
     * @param random faults expected up to a month of the year
     * @param condensers as they begin the year
     * @param waters the same
     */
    private record Year(DoubleUnaryOperator random, List<Side> condensers, CleaningSchedule brushings,
            List<Side> waters, CleaningSchedule cleanings, StopPolicy policy, double months) {

        private static final int STEPS = 12;

        CountDistribution calls() {
            return CountDistribution.poisson(random.applyAsDouble(months))
                    .plus(sum(condensers, policy, months, brushings)).plus(sum(waters, policy, months, cleanings));
        }

        /**
         * How many calls of each cause are expected after so many of the year. Calls of one side follow each other, so it is asked of each
         * whether it is the side's first, second and so on, and how many others came before. The
         * steps in which months are added up cost less than half a percent.
         */
        Map<Cause, Double> after(int included) {
            List<Source> sources = sources();
            List<List<CountDistribution>> counts = sources.stream().map(source -> IntStream.rangeClosed(0, STEPS)
                    .mapToObj(step -> source.until().apply(months * step / STEPS)).toList()).toList();
            Map<Cause, Double> after = new EnumMap<>(Cause.class);
            for (int own = 0; own < sources.size(); own++) {
                double sum = 0;
                CountDistribution before = CountDistribution.NONE;
                for (int step = 1; step <= STEPS; step++) {
                    CountDistribution others = others(sources, counts, own, step);
                    CountDistribution reached = counts.get(own).get(step);
                    CountDistribution left = counts.get(own).get(step - 1);
                    for (int n = 0; n < reached.most(); n++) {
                        double here = reached.chanceOfMoreThan(n) - left.chanceOfMoreThan(n);
                        sum += here * (atLeast(before, included - n) + atLeast(others, included - n)) / 2;
                    }
                    before = others;
                }
                after.merge(sources.get(own).cause(), sources.get(own).number() * sum, Double::sum);
            }
            return after;
        }

        private List<Source> sources() {
            List<Source> sources = new ArrayList<>(List.of(new Source(Cause.RANDOM, 1,
                    until -> CountDistribution.poisson(random.applyAsDouble(until)))));
            condensers.stream().distinct().forEach(side -> sources.add(source(Cause.CONDENSER, side, condensers,
                    brushings)));
            waters.stream().distinct().forEach(side -> sources.add(source(Cause.WATER, side, waters, cleanings)));
            return sources;
        }

        private Source source(Cause cause, Side side, List<Side> all, CleaningSchedule care) {
            return new Source(cause, (int) all.stream().filter(side::equals).count(),
                    until -> until == 0 ? CountDistribution.NONE : sum(List.of(side), policy, until, care));
        }

        private static CountDistribution others(List<Source> sources, List<List<CountDistribution>> counts, int own,
                int step) {
            CountDistribution others = CountDistribution.NONE;
            for (int i = 0; i < sources.size(); i++) {
                others = others.plus(counts.get(i).get(step).times(sources.get(i).number() - (i == own ? 1 : 0)));
            }
            return others;
        }

        private static double atLeast(CountDistribution counts, int calls) {
            return calls <= 0 ? 1 : counts.chanceOfMoreThan(calls - 1);
        }
    }

    /**
     * Sides as they begin a year of a horizon. How old dirt is when a later year begins, calls decide too; it is taken at the one age by which
     * as many stops are expected as the whole horizon has in that year.
     */
    private static List<Side> begun(List<Side> sides, CleaningSchedule care, StopPolicy policy, double from,
            double until) {
        if (from == 0) {
            return sides;
        }
        CleaningSchedule year = care.within(from, until);
        Map<Side, Side> begun = new HashMap<>();
        for (Side side : sides) {
            begun.computeIfAbsent(side, key -> {
                List<Side> one = List.of(key);
                double expected = sum(one, policy, until, care).mean() - sum(one, policy, from, care).mean();
                StopCounts stops = new StopCounts(key.clock(), policy,
                        Stretches.of(year, key.season(), until - from));
                return new Side(key.clock(), age(stops, expected, key.age() + key.season().run(from)), key.season());
            });
        }
        return sides.stream().map(side -> Objects.requireNonNull(begun.get(side))).toList();
    }

    /** The age from 0 to the most by which so many stops are expected, or the nearest to it. */
    private static double age(StopCounts stops, double expected, double most) {
        DoubleUnaryOperator more = age -> stops.of(age).mean() - expected;
        double youngest = more.applyAsDouble(0);
        double oldest = more.applyAsDouble(most);
        if (oldest <= 0 || youngest >= 0) {
            return oldest <= 0 ? most : 0;
        }
        return new BrentSolver(SAME_AGE).solve(MOST_STEPS, more::applyAsDouble, 0, most);
    }

    /** Sides that are alike are counted once, and all sides of one clock share what it takes to count. */
    private static CountDistribution sum(List<Side> sides, StopPolicy policy, double months, CleaningSchedule care) {
        Map<Alike, StopCounts> known = new HashMap<>();
        return sides.stream().distinct()
                .map(side -> known
                        .computeIfAbsent(new Alike(side.clock(), side.season()),
                                alike -> new StopCounts(alike.clock(), policy,
                                        Stretches.of(care, alike.season(), months)))
                        .of(side.age()).times((int) sides.stream().filter(side::equals).count()))
                .reduce(CountDistribution.NONE, CountDistribution::plus);
    }

    CountDistribution calls(Cause cause) {
        return Objects.requireNonNull(counts.get(cause));
    }

    CountDistribution calls() {
        return counts.values().stream().reduce(CountDistribution.NONE, CountDistribution::plus);
    }

    /** What is paid over the horizon whatever happens, in minor units, the rest of a year in proportion, rounded once. */
    long planned() {
        return charged.planned(choice);
    }

    /** What calls cost, without what is planned and without calls that are included in it. */
    ChargeDistribution charges() {
        return charges;
    }

    /** What calls cost and what is planned. */
    ChargeDistribution total() {
        return charges().plus(planned());
    }

    /** What calls cost that are paid for. Where some are included, each call after those draws its cause by what is expected of causes there. */
    private List<ChargePart> paidParts() {
        if (choice.included() == 0) {
            return Stream.of(Cause.values()).map(this::part).toList();
        }
        Map<Cause, Double> after = new EnumMap<>(Cause.class);
        years.forEach(year -> year.after(choice.included())
                .forEach((cause, calls) -> after.merge(cause, calls, Double::sum)));
        double all = after.values().stream().mapToDouble(Double::doubleValue).sum();
        return List.of(new ChargePart(paid, all == 0
                ? List.of()
                : after.entrySet().stream().flatMap(expected -> amounts(expected.getKey()).stream()
                        .map(amount -> new ChargePart.Amount(amount.share() * expected.getValue() / all,
                                amount.minor())))
                        .toList()));
    }

    private ChargePart part(Cause cause) {
        return new ChargePart(calls(cause), amounts(cause));
    }

    private List<ChargePart.Amount> amounts(Cause cause) {
        return charged.amounts(cause, choice.calls().of(cause));
    }

    /** As {@link Forecast#chanceCheaperThan}. */
    double chanceCheaperThan(ScenarioForecast other) {
        if (choice.included() > 0 || other.choice.included() > 0) {
            return isNeverDearerThan(other)
                    ? 1
                    : other.isNeverDearerThan(this) ? 0 : total().chanceOfLessThan(other.total());
        }
        List<ChargePart> own = new ArrayList<>();
        List<ChargePart> others = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            Difference difference = Difference.of(amounts(cause), other.amounts(cause));
            if (cause == Cause.RANDOM
                    || (choice.caresLike(other.choice, cause, months) && difference.isOneSided())) {
                difference.dearer(calls(cause)).ifPresent(own::add);
                difference.cheaper(calls(cause)).ifPresent(others::add);
            } else {
                own.add(part(cause));
                others.add(other.part(cause));
            }
        }
        return law(own).plus(planned()).chanceOfLessThan(other.law(others).plus(other.planned()));
    }

    /** Whether the same care is cheaper beforehand and never dearer afterwards. */
    private boolean isNeverDearerThan(ScenarioForecast other) {
        return planned() < other.planned() && choice.included() >= other.choice.included()
                && Stream.of(Cause.values()).allMatch(cause -> choice.caresLike(other.choice, cause, months)
                        && Difference.of(amounts(cause), other.amounts(cause)).isNeverDearer());
    }

    private ChargeDistribution law(List<ChargePart> parts) {
        return parts.equals(List.of(part(Cause.CONDENSER), part(Cause.WATER)))
                ? dirt
                : ChargeDistribution.of(parts);
    }
}
