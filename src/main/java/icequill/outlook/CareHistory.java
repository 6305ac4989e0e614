package icequill.outlook;

import icequill.forecast.CallKind;
import icequill.forecast.CallTable;
import icequill.forecast.Cause;
import icequill.forecast.CleaningSchedule;
import icequill.forecast.Forecast;
import icequill.forecast.MachineRisk;
import icequill.forecast.MaintenancePolicy;
import icequill.forecast.StopPolicy;
import icequill.problem.Place;
import icequill.problem.Problem;
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

    /** What the guesses would have led us to expect. */
    Forecast forecast() {
        return Forecast.of(List.of(risk), new MaintenancePolicy(0, water, condenser, UNPRICED), policy, months);
    }

    /** Figures by which it would have stopped hundreds of times. */
    List<Problem> problems(Place place) {
        return Forecast.problems(List.of(risk), water, condenser, policy, months, place);
    }
}
