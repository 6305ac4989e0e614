package icequill.forecast;

import icequill.problem.Check;
import java.util.Optional;

/**
 * How likely a machine is to stop.
 *
 * @param randomAYear random faults expected in a year, from 0
 * @param condenser empty for a machine that is cooled by water
 * @param monthsSinceBrushed since its condenser was last brushed
 * @param monthsSinceCleaned since its last full cleaning
 */
public record MachineRisk(double randomAYear, Optional<DirtClock> condenser, double monthsSinceBrushed,
        DirtClock water, double monthsSinceCleaned) {

    public MachineRisk {
        Check.that(randomAYear >= 0 && Double.isFinite(randomAYear), "random faults: " + randomAYear);
    }
}
