package icequill.forecast.stops;

import icequill.problem.Check;
import java.util.ArrayList;
import java.util.List;

/**
 * A fixed calendar of one side's cleanings. Months count from the beginning of the horizon.
 *
 * @param at months of the cleanings in one turn of the calendar, rising, from 0 and below the turn; empty for never
 * @param turn months after which they come again, above 0
 * @param restores the part of its age that a cleaning takes away, above 0 and up to 1; what is left heaps up
 */
public record CleaningSchedule(List<Double> at, double turn, double restores) {

    /** Nothing is cleaned unless a call does it. */
    public static final CleaningSchedule NEVER = new CleaningSchedule(List.of(), Double.POSITIVE_INFINITY, 1);

    /** Below it, what lies between a cleaning and the end is what rounding left. */
    private static final double NOTHING = 1e-9;

    public CleaningSchedule {
        at = List.copyOf(at);
        Check.that(turn > 0, "a calendar of " + turn + " months");
        Check.that(restores > 0 && restores <= 1, "a cleaning that restores " + restores);
        double before = -1;
        for (double month : at) {
            Check.that(month >= 0 && month > before && month < turn, "cleanings at " + at + " in " + turn + " months");
            before = month;
        }
    }

    /** A cleaning at the beginning and every so many months. */
    public CleaningSchedule(double months, double restores) {
        this(List.of(0.0), months, restores);
    }

    /** A full cleaning at the beginning and every so many months. */
    public static CleaningSchedule every(double months) {
        return new CleaningSchedule(months, 1);
    }

    /** Months of the cleanings before the end of a horizon. */
    public List<Double> until(double months) {
        List<Double> cleanings = new ArrayList<>();
        for (int turns = 0; !at.isEmpty(); turns++) {
            for (double month : at) {
                double next = turns == 0 ? month : turns * turn + month;
                if (next >= months - NOTHING) {
                    return cleanings;
                }
                cleanings.add(next);
            }
        }
        return cleanings;
    }

    /** The cleanings from one month of the horizon until before another, counted from the first of the two. */
    public CleaningSchedule within(double from, double until) {
        List<Double> cleanings = until(until).stream().filter(month -> month >= from - NOTHING)
                .map(month -> Math.max(0, month - from)).toList();
        return cleanings.isEmpty() ? NEVER : new CleaningSchedule(cleanings, Double.POSITIVE_INFINITY, restores);
    }
}
