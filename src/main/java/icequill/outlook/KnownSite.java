package icequill.outlook;

import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.SharedFactor;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * The calls that the guesses would have led us to expect at a site over months that have been. How bad a site is, all its machines
 * and causes share, so that calls are added up within each scenario of it, and the scenarios mixed.
 *
 * @param weights of the scenarios
 * @param scenarios the calls of each cause, at all machines together
 */
public record KnownSite(List<Double> weights, List<Map<Cause, CountDistribution>> scenarios) {

    /** Of machines with their care. */
    static KnownSite of(List<CareHistory> machines, SharedFactor shared) {
        List<SharedFactor.Scenario> scenarios = shared.scenarios();
        return new KnownSite(scenarios.stream().map(SharedFactor.Scenario::weight).toList(),
                scenarios.stream().map(scenario -> calls(machines, scenario)).toList());
    }

    private static Map<Cause, CountDistribution> calls(List<CareHistory> machines, SharedFactor.Scenario scenario) {
        List<Forecast> forecasts = machines.stream().map(machine -> machine.forecast(scenario)).toList();
        Map<Cause, CountDistribution> calls = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            calls.put(cause, sum(forecasts.stream().map(forecast -> forecast.calls(cause))));
        }
        return calls;
    }

    /** The calls of one cause. */
    public CountDistribution calls(Cause cause) {
        return CountDistribution.mixed(weights,
                scenarios.stream().map(calls -> Objects.requireNonNull(calls.get(cause))).toList());
    }

    /** All calls. */
    public CountDistribution calls() {
        return CountDistribution.mixed(weights, callsInScenarios());
    }

    /** All calls in each scenario. */
    List<CountDistribution> callsInScenarios() {
        return scenarios.stream().map(calls -> sum(Arrays.stream(Cause.values())
                .map(cause -> Objects.requireNonNull(calls.get(cause))))).toList();
    }

    private static CountDistribution sum(Stream<CountDistribution> counts) {
        return counts.reduce(CountDistribution.NONE, CountDistribution::plus);
    }
}
