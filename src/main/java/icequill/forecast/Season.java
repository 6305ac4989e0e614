package icequill.forecast;

import icequill.problem.Check;
import java.util.List;

/**
 * The part of each year in which machines run. Out of season they neither get dirty nor stop.
 *
 * @param open stretches of a year that begins with the horizon, rising and apart; at least one
 */
public record Season(List<Stretch> open) {

    private static final double YEAR = 12;

    /** Months of a year, from and until, with 0 &lt;= from &lt; until &lt;= 12. */
    public record Stretch(double from, double until) {
        public Stretch {
            Check.that(from >= 0 && from < until && until <= YEAR, "open from month " + from + " until " + until);
        }
    }

    /** Machines that never stand idle. */
    public static final Season ALL_YEAR = new Season(List.of(new Stretch(0, YEAR)));

    public Season {
        open = List.copyOf(open);
        Check.that(!open.isEmpty(), "a season that is never open");
        for (int i = 1; i < open.size(); i++) {
            Check.that(open.get(i - 1).until() <= open.get(i).from(), "a season open at " + open);
        }
    }

    /** Months that a machine has run by a month of the horizon. */
    double run(double month) {
        if (equals(ALL_YEAR)) {
            return month;
        }
        double years = Math.floor(month / YEAR);
        double left = month - years * YEAR;
        double run = 0;
        for (Stretch stretch : open) {
            run += years * (stretch.until() - stretch.from())
                    + Math.clamp(left - stretch.from(), 0, stretch.until() - stretch.from());
        }
        return run;
    }
}
