package icequill.forecast;

import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.StopPolicy;
import icequill.problem.Check;
import java.util.List;

/**
 * Two choices for the same machines over the same months.
 *
 * @param first the one that is asked about
 * @param second the one it is held against
 */
public record PolicyComparison(List<MachineRisk> machines, MaintenancePolicy first, MaintenancePolicy second,
        StopPolicy policy, double months,
        PriceTerms terms) {

    public PolicyComparison {
        machines = List.copyOf(machines);
        Check.that(!machines.isEmpty(), "no machines");
    }

    /**
     * By how much the first is expected to be cheaper over the months, in minor units, rounded once; negative where it is dearer. No
     * distribution is worked out for it.
     */
    public long saved() {
        Forecast one = Forecast.of(machines, first, policy, months, terms);
        Forecast other = Forecast.of(machines, second, policy, months, terms);
        return Decimals.minorUnits(other.total().mean() - one.total().mean());
    }
}
