package icequill.forecast;

import icequill.problem.Check;

/**
 * What a call does to the clock of the side it was for.
 *
 * @param cleans the part of the calls whose work cleans or brushes that side, from 0 to 1; the others only make the machine run
 *        again, and the dirt stays
 */
public record StopPolicy(double cleans) {

    /** Each call cleans or brushes its side, and that is priced in. */
    public static final StopPolicy RESETS = new StopPolicy(1);
    /** Each call only makes the machine run again. */
    public static final StopPolicy RESTARTS = new StopPolicy(0);

    public StopPolicy {
        Check.that(cleans >= 0 && cleans <= 1, "a part of " + cleans + " of the calls");
    }
}
