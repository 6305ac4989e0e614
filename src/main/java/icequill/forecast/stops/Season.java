package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.List;

/**
 * How the months of each year count for a side of a machine. Out of season it neither gets dirty nor stops; where months count twice, it
 * does both twice as fast.
 *
 * @param open stretches of a year that begins with the horizon, rising and apart; at least one
 */
public record Season(List<Stretch> open) {

    private static final double YEAR = 12;

    /**
     * Months of a year.
     *
     * @param from with 0 &lt;= from &lt; until &lt;= 12
     * @param counts how many months each of them counts, above 0
     */
    public record Stretch(double from, double until, double counts) {
        public Stretch {
            Check.that(from >= 0 && from < until && until <= YEAR, "open from month " + from + " until " + until);
            Check.that(counts > 0 && Double.isFinite(counts), "months that count " + counts);
        }
    }

    /** Machines that never stand idle, and stop in no month more often than in another. */
    public static final Season ALL_YEAR = new Season(List.of(new Stretch(0, YEAR, 1)));

    public Season {
        open = List.copyOf(open);
        Check.that(!open.isEmpty(), "a season that is never open");
        for (int i = 1; i < open.size(); i++) {
            Check.that(open.get(i - 1).until() <= open.get(i).from(), "a season open at " + open);
        }
    }

    /** Months that count up to a month of the horizon. */
    public double run(double month) {
        if (equals(ALL_YEAR)) {
            return month;
        }
        double years = Math.floor(month / YEAR);
        double left = month - years * YEAR;
        double run = 0;
        for (Stretch stretch : open) {
            double length = stretch.until() - stretch.from();
            run += stretch.counts() * (years * length + Math.clamp(left - stretch.from(), 0, length));
        }
        return run;
    }
}
