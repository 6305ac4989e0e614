package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.Optional;

/**
 * How likely a machine is to stop.
 *
 * @param randomAYear random faults expected in a year, from 0
 * @param condenser empty for a machine that is cooled by water
 * @param monthsSinceBrushed since its condenser was last brushed
 * @param monthsSinceCleaned since its last full cleaning
 * @param seasons how the months of a year count
 */
public record MachineRisk(double randomAYear, Optional<FoulingLife> condenser, double monthsSinceBrushed,
        FoulingLife water, double monthsSinceCleaned, Seasons seasons) {

    private static final double YEAR = 12;

    /** How the months of a year count for what may stop it. */
    public record Seasons(Season random, Season condenser, Season water) {
        public static final Seasons ALL_YEAR = new Seasons(Season.ALL_YEAR, Season.ALL_YEAR, Season.ALL_YEAR);
    }

    public MachineRisk {
        Check.that(randomAYear >= 0 && Double.isFinite(randomAYear), "random faults: " + randomAYear);
    }

    /** Of a machine that runs all year and stops in no month more often than in another. */
    public MachineRisk(double randomAYear, Optional<FoulingLife> condenser, double monthsSinceBrushed,
            FoulingLife water,
            double monthsSinceCleaned) {
        this(randomAYear, condenser, monthsSinceBrushed, water, monthsSinceCleaned, Seasons.ALL_YEAR);
    }

    /** The same machine where each stop is so many times as likely at any moment. */
    MachineRisk stopping(double factor) {
        return new MachineRisk(randomAYear * factor, condenser.map(clock -> clock.stopping(factor)), monthsSinceBrushed,
                water.stopping(factor), monthsSinceCleaned, seasons);
    }

    /** Random faults expected up to a month of the horizon. */
    public double randomUntil(double month) {
        return randomAYear * seasons.random().run(month) / YEAR;
    }
}
