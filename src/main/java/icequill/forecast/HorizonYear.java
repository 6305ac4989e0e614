package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import icequill.forecast.stops.Stretches;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A year of a horizon.
 *
 * @param random faults expected up to a month of the year
 * @param condensers as they begin the year
 * @param waters the same
 */
record HorizonYear(DoubleUnaryOperator random, List<MachineSide> condensers, CleaningSchedule brushings,
        List<MachineSide> waters, CleaningSchedule cleanings, StopPolicy policy, double months) {

    private static final int STEPS = 12;
    /** Months by which an age may be off. */
    private static final double SAME_AGE = 1e-9;
    private static final int MOST_STEPS = 200;

    /** Calls of one kind, as many times over as machines have them alike. */
    private record Source(Cause cause, int number, DoubleFunction<CountDistribution> until) {}

    CountDistribution calls() {
        return CountDistribution.poisson(random.applyAsDouble(months))
                .plus(MachineSide.stops(condensers, policy, months, brushings))
                .plus(MachineSide.stops(waters, policy, months, cleanings));
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

    private Source source(Cause cause, MachineSide side, List<MachineSide> all, CleaningSchedule care) {
        return new Source(cause, (int) all.stream().filter(side::equals).count(),
                until -> until == 0 ? CountDistribution.NONE : MachineSide.stops(List.of(side), policy, until, care));
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

    /**
     * Sides as they begin a year of a horizon. How old dirt is when a later year begins, calls decide too; it is taken at the one age by which
     * as many stops are expected as the whole horizon has in that year.
     */
    static List<MachineSide> begun(List<MachineSide> sides, CleaningSchedule care, StopPolicy policy, double from,
            double until) {
        if (from == 0) {
            return sides;
        }
        CleaningSchedule year = care.within(from, until);
        Map<MachineSide, MachineSide> begun = new HashMap<>();
        for (MachineSide side : sides) {
            begun.computeIfAbsent(side, key -> {
                List<MachineSide> one = List.of(key);
                double expected = MachineSide.stops(one, policy, until, care).mean()
                        - MachineSide.stops(one, policy, from, care).mean();
                StopCounts stops = new StopCounts(key.clock(), policy,
                        Stretches.of(year, key.season(), until - from));
                return new MachineSide(key.clock(), age(stops, expected, key.age() + key.season().run(from)),
                        key.season());
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
}
