package icequill.forecast;

import icequill.problem.Check;

/**
 * How often a side is cleaned on a fixed calendar: at the beginning and every so many months.
 *
 * @param months from one cleaning to the next; {@link Double#POSITIVE_INFINITY} for never, and then not at the beginning either
 * @param restores the part of its age that a cleaning takes away, above 0 and up to 1
 */
public record Care(double months, double restores) {

    /** Nothing is cleaned unless a call does it. */
    public static final Care NEVER = new Care(Double.POSITIVE_INFINITY, 1);

    public Care {
        Check.that(months > 0, "an interval of " + months + " months");
        Check.that(restores > 0 && restores <= 1, "a cleaning that restores " + restores);
    }

    /** A full cleaning every so many months. */
    public static Care every(double months) {
        return new Care(months, 1);
    }
}
