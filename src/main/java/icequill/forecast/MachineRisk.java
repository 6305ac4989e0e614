package icequill.forecast;

import icequill.problem.Check;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.Optional;

/**
 * How likely a machine is to stop.
 *
 * @param randomAYear random faults expected in a year, from 0
 * @param condenser empty for a machine that is cooled by water
 * @param monthsSinceBrushed since its condenser was last brushed
 * @param monthsSinceCleaned since its last full cleaning
 * @param season in which it runs
 */
public record MachineRisk(double randomAYear, Optional<FoulingLife> condenser, double monthsSinceBrushed,
        FoulingLife water, double monthsSinceCleaned, Season season) {

    private static final double YEAR = 12;
    private static final double MOST_FAULTS = 50;
    private static final double MOST_MONTHS = 600;

    public MachineRisk {
        Check.that(randomAYear >= 0 && Double.isFinite(randomAYear), "random faults: " + randomAYear);
    }

    /** Of a machine that runs all year. */
    public MachineRisk(double randomAYear, Optional<FoulingLife> condenser, double monthsSinceBrushed,
            FoulingLife water,
            double monthsSinceCleaned) {
        this(randomAYear, condenser, monthsSinceBrushed, water, monthsSinceCleaned, Season.ALL_YEAR);
    }

    /** The same machine where each stop is so many times as likely at any moment. */
    MachineRisk stopping(double factor) {
        return new MachineRisk(randomAYear * factor, condenser.map(clock -> clock.stopping(factor)), monthsSinceBrushed,
                water.stopping(factor), monthsSinceCleaned, season);
    }

    /** Random faults expected up to a month of the horizon. */
    double randomUntil(double month) {
        return randomAYear * season.run(month) / YEAR;
    }

    /** Checks what was entered: faults from 0 to {@value #MOST_FAULTS} a year, months from 0 to {@value #MOST_MONTHS}. */
    public static Checked<MachineRisk> of(double randomAYear, Optional<FoulingLife> condenser,
            double monthsSinceBrushed,
            FoulingLife water, double monthsSinceCleaned, Place place) {
        Problems problems = new Problems();
        check("random faults in a year", randomAYear, MOST_FAULTS, place, problems);
        check("months since it was brushed", monthsSinceBrushed, MOST_MONTHS, place, problems);
        check("months since it was cleaned", monthsSinceCleaned, MOST_MONTHS, place, problems);
        return problems
                .or(() -> new MachineRisk(randomAYear, condenser, monthsSinceBrushed, water, monthsSinceCleaned));
    }

    private static void check(String what, double value, double most, Place place, Problems problems) {
        if (!(value >= 0 && value <= most)) {
            problems.add(new Problem(Code.OUT_OF_RANGE, place, value + " " + what, "from 0 to " + most));
        }
    }
}
