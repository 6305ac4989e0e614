package icequill.office;

import icequill.forecast.Cause;
import icequill.forecast.Counts;
import icequill.forecast.Forecast;
import icequill.forecast.SharedFactor;
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
record KnownSite(List<Double> weights, List<Map<Cause, Counts>> scenarios) {

    /** Of machines with their care. */
    static KnownSite of(List<KnownCare> machines, SharedFactor shared) {
        return new KnownSite(shared.scenarios().stream().map(SharedFactor.Scenario::weight).toList(),
                shared.scenarios().stream().map(scenario -> calls(machines, scenario)).toList());
    }

    private static Map<Cause, Counts> calls(List<KnownCare> machines, SharedFactor.Scenario scenario) {
        List<Forecast> forecasts = machines.stream().map(machine -> machine.forecast(scenario)).toList();
        Map<Cause, Counts> calls = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            calls.put(cause, sum(forecasts.stream().map(forecast -> forecast.calls(cause))));
        }
        return calls;
    }

    /** The calls of one cause. */
    Counts calls(Cause cause) {
        return Counts.mixed(weights,
                scenarios.stream().map(calls -> Objects.requireNonNull(calls.get(cause))).toList());
    }

    /** All calls. */
    Counts calls() {
        return Counts.mixed(weights, callsInScenarios());
    }

    /** All calls in each scenario. */
    List<Counts> callsInScenarios() {
        return scenarios.stream().map(calls -> sum(Arrays.stream(Cause.values())
                .map(cause -> Objects.requireNonNull(calls.get(cause))))).toList();
    }

    private static Counts sum(Stream<Counts> counts) {
        return counts.reduce(Counts.NONE, Counts::plus);
    }
}
