package icequill.forecast;

import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.CountDistribution;
import icequill.forecast.stops.FoulingLife;
import icequill.forecast.stops.MachineRisk;
import icequill.forecast.stops.Season;
import icequill.forecast.stops.StopCounts;
import icequill.forecast.stops.StopPolicy;
import icequill.forecast.stops.Stretches;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One side of a machine: the clock it runs by, its age, and how its months count. */
record MachineSide(FoulingLife clock, double age, Season season) {

    static Optional<MachineSide> condenser(MachineRisk machine) {
        return machine.condenser()
                .map(clock -> new MachineSide(clock, machine.monthsSinceBrushed(), machine.seasons().condenser()));
    }

    static MachineSide water(MachineRisk machine) {
        return new MachineSide(machine.water(), machine.monthsSinceCleaned(), machine.seasons().water());
    }

    /** Of sides that run alike. */
    private record Alike(FoulingLife clock, Season season) {}

    /** Sides that are alike are counted once, and all sides of one clock share what it takes to count. */
    static CountDistribution stops(List<MachineSide> sides, StopPolicy policy, double months, CleaningSchedule care) {
        Map<Alike, StopCounts> known = new HashMap<>();
        return sides.stream().distinct()
                .map(side -> known
                        .computeIfAbsent(new Alike(side.clock(), side.season()),
                                alike -> new StopCounts(alike.clock(), policy,
                                        Stretches.of(care, alike.season(), months)))
                        .of(side.age()).times((int) sides.stream().filter(side::equals).count()))
                .reduce(CountDistribution.NONE, CountDistribution::plus);
    }
}
