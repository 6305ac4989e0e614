package icequill.forecast;

import icequill.forecast.stops.CountDistribution;
import icequill.problem.Check;

/**
 * Calls that were counted, held against the law by which they were expected.
 *
 * @param atLeast calls that are surely meant
 * @param atMost the same with those that may be meant or not
 */
public record Tally(CountDistribution expected, int atLeast, int atMost) {

    /** A number of calls so far out comes in one year of ten. */
    private static final double SELDOM = 0.1;

    /** How the calls fit what was expected, however those that may be meant or not are counted. */
    public enum Fit {
        FEWER, FITS, MORE
    }

    public Tally {
        Check.that(atLeast >= 0 && atLeast <= atMost, "from " + atLeast + " to " + atMost + " calls");
    }

    /** Of calls that are all surely meant. */
    public Tally(CountDistribution expected, int had) {
        this(expected, had, had);
    }

    public Fit fit() {
        return atMost < low() ? Fit.FEWER : atLeast > high() ? Fit.MORE : Fit.FITS;
    }

    /** The fewest calls that are not seldom: so few or fewer come in one year of ten at least. */
    public int low() {
        int calls = 0;
        while (1 - expected.chanceOfMoreThan(calls) < SELDOM) {
            calls++;
        }
        return calls;
    }

    /** The most calls that are not seldom: so many or more come in one year of ten at least. */
    public int high() {
        int calls = low();
        while (expected.chanceOfMoreThan(calls) >= SELDOM) {
            calls++;
        }
        return calls;
    }

    /** The chance of what was counted. */
    public double chance() {
        return expected.chanceOfMoreThan(atLeast - 1) - expected.chanceOfMoreThan(atMost);
    }
}
