package icequill.forecast;

import icequill.forecast.charges.MixedDistribution;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.SharedFactor;
import icequill.forecast.stops.StopPolicy;
import icequill.problem.Check;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What a choice leads to over some months: the calls of each cause and what they cost. Everything is conditional on the figures
 * that went in. Where machines of a site stop together, it is a mixture over how bad the site is.
 */
public final class Forecast {

    private static final double MOST_MONTHS = 120;

    private final double months;
    private final List<Double> weights;
    /** One for each weight. */
    private final List<ScenarioForecast> scenarios;
    /** Chances of being cheaper than others, as far as somebody asked. */
    private final Map<Forecast, Double> cheaper = new ConcurrentHashMap<>();

    private Forecast(double months, List<Double> weights, List<ScenarioForecast> scenarios) {
        this.months = months;
        this.weights = weights;
        this.scenarios = scenarios;
    }

    /** A forecast at today's prices. */
    public static Forecast of(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months) {
        return of(machines, choice, policy, months, PriceTerms.NONE);
    }

    /**
     * The forecast for the machines of a site, whose stops depend on each other as far as the policy says.
     *
     * @param months of the horizon, above 0, up to {@value #MOST_MONTHS}; years are one run, not a sum of first years
     * @param terms how later years are counted. Means stay exact; the spread supposes that the years of a side's calls do not
     *        depend on their number, which holds for random faults and where a call only restarts
     */
    public static Forecast of(List<MachineRisk> machines, MaintenancePolicy choice, StopPolicy policy, double months,
            PriceTerms terms) {
        Check.that(months > 0 && months <= MOST_MONTHS, "a horizon of " + months + " months");
        List<SharedFactor.Scenario> all = policy.shared().scenarios();
        return new Forecast(months, all.stream().map(SharedFactor.Scenario::weight).toList(), all.stream()
                .map(scenario -> ScenarioForecast.of(scenario.of(machines), choice, policy.inScenario(), months, terms))
                .toList());
    }

    /**
     * A problem for each side that would stop so often, at the worst of such sites, that a figure must be wrong, or one for an absurd
     * horizon.
     */
    public static List<Problem> problems(List<MachineRisk> machines, CleaningSchedule water, CleaningSchedule condenser,
            StopPolicy policy,
            double months, Place place) {
        Problems problems = new Problems();
        if (!(months > 0 && months <= MOST_MONTHS)) {
            problems.add(Code.OUT_OF_RANGE, place, "a horizon of " + months + " months",
                    "above 0, up to " + MOST_MONTHS);
            return problems.list();
        }
        problems.addAll(ScenarioForecast.problems(policy.shared().scenarios().getLast().of(machines), water, condenser,
                policy, months, place));
        return problems.list();
    }

    /** The calls of a cause. */
    public CountDistribution calls(Cause cause) {
        return counts(scenario -> scenario.calls(cause));
    }

    /** All calls. */
    public CountDistribution calls() {
        return counts(ScenarioForecast::calls);
    }

    private CountDistribution counts(Function<ScenarioForecast, CountDistribution> part) {
        return CountDistribution.mixed(weights, scenarios.stream().map(part).toList());
    }

    /** What is paid over the horizon whatever happens, in minor units, the rest of a year in proportion, rounded once. */
    public long planned() {
        return scenarios.getFirst().planned();
    }

    /** What calls cost, without what is planned and without calls that are included in it. */
    public MixedDistribution charges() {
        return MixedDistribution.of(weights, scenarios.stream().map(ScenarioForecast::charges).toList());
    }

    /** What calls cost and what is planned. */
    public MixedDistribution total() {
        return total(weights);
    }

    /** The same with other weights of the {@linkplain SharedFactor#scenarios scenarios}, which add up to 1. */
    public MixedDistribution total(List<Double> known) {
        return MixedDistribution.of(known, scenarios.stream().map(ScenarioForecast::total).toList());
    }

    /**
     * The chance that this choice costs less in all than another over the same months for the same machines. Both share how bad the
     * site is, their random faults, since the same pump fails either way, and the dirt of a side that both care for alike, since
     * the same dirt stops it either way; the rest is independent. Dirt is shared as long as one of them is never the dearer one for any kind of
     * its calls. Where calls are included, one that is cheaper in price, in every kind of call and in included ones is the cheaper
     * one for certain; in any other case the two are independent.
     */
    public double chanceCheaperThan(Forecast other) {
        Check.that(months == other.months, "horizons differ: " + months + ", " + other.months);
        Check.that(weights.equals(other.weights), "machines that stop together otherwise");
        return cheaper.computeIfAbsent(other, this::cheaperThan);
    }

    private double cheaperThan(Forecast other) {
        return Math.min(1, IntStream.range(0, weights.size())
                .mapToDouble(i -> weights.get(i) * scenarios.get(i).chanceCheaperThan(other.scenarios.get(i))).sum());
    }
}
