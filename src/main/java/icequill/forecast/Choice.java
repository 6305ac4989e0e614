package icequill.forecast;

import icequill.problem.Check;

/**
 * A way of having machines looked after.
 *
 * @param planned what is paid for it in a year whatever happens, in minor units, from 0
 * @param water how often the side of the water is cleaned
 * @param condenser how often condensers are brushed
 * @param calls what calls cost under it
 */
public record Choice(long planned, Care water, Care condenser, CallTable calls) {

    public Choice {
        Check.that(planned >= 0, "a planned price of " + planned);
    }
}
