package icequill.forecast.stops;

import icequill.problem.Check;

/**
 * What a call does to the clock of the side it was for, and how far the machines of a site stop together.
 *
 * @param cleans the part of the calls whose work cleans or brushes that side, from 0 to 1; the others only make the machine run
 *        again, and the dirt stays
 */
public record StopPolicy(double cleans, SharedFactor shared) {

    /** Each call cleans or brushes its side, and that is priced in. */
    public static final StopPolicy RESETS = new StopPolicy(1);
    /** Each call only makes the machine run again. */
    public static final StopPolicy RESTARTS = new StopPolicy(0);

    public StopPolicy {
        Check.that(cleans >= 0 && cleans <= 1, "a part of " + cleans + " of the calls");
    }

    /** Of machines whose stops do not depend on each other. */
    public StopPolicy(double cleans) {
        this(cleans, SharedFactor.NONE);
    }

    /** The same within one scenario of what a site's machines share. */
    public StopPolicy inScenario() {
        return new StopPolicy(cleans);
    }
}
