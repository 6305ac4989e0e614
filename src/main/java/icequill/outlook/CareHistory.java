package icequill.outlook;

import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.Forecast;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.Pace;
import icequill.forecast.stops.SharedFactor;
import icequill.forecast.stops.StopPolicy;
import icequill.party.Machine;
import icequill.plans.SideCare;
import icequill.plans.SiteRisks;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A machine over months that have been, with the cleanings that are known. What its calls cost does not matter here.
 *
 * @param risk at the beginning
 * @param months that it is looked at
 */
record CareHistory(MachineRisk risk, CleaningSchedule water, CleaningSchedule condenser, StopPolicy policy,
        double months) {

    private static final CallTable UNPRICED = new CallTable(Arrays.stream(Cause.values())
            .collect(Collectors.toMap(Function.identity(), cause -> List.of(new CallKind(1, 0)))));

    /**
     * The days that are looked at.
     *
     * @param until the day after the last
     */
    record Span(LocalDate begins, LocalDate until) {

        /** The day from which a machine could stop. */
        LocalDate begun(Machine machine) {
            return machine.installed().filter(begins::isBefore).orElse(begins);
        }

        boolean has(Machine machine) {
            return begun(machine).isBefore(until);
        }
    }

    /**
     * Of a machine in some time, or from its first day on.
     *
     * @param guessed its clocks and faults
     */
    static CareHistory of(SiteRisks risks, Machine machine, MachineRisk guessed, SideCare condenser, SideCare water,
            Span span) {
        LocalDate from = span.begun(machine);
        MachineRisk then = new MachineRisk(guessed.randomAYear(), guessed.condenser(), condenser.before(from),
                guessed.water(), water.before(from), risks.seasons(from));
        return new CareHistory(then, water.care(from, span.until()), condenser.care(from, span.until()), risks.policy(),
                Pace.position(from, span.until()));
    }

    /** What the guesses would have led us to expect where the site is so bad. */
    Forecast forecast(SharedFactor.Scenario scenario) {
        return Forecast.of(scenario.of(List.of(risk)), new MaintenancePolicy(0, water, condenser, UNPRICED),
                policy.inScenario(),
                months);
    }

    /** Figures by which it would have stopped hundreds of times. */
    List<Problem> problems(Place place) {
        return Forecast.problems(List.of(risk), water, condenser, policy, months, place);
    }
}
