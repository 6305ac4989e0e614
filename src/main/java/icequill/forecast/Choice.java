package icequill.forecast;

import icequill.problem.Check;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;

/**
 * A way of having machines looked after.
 *
 * @param planned what is paid for it in a year whatever happens, in minor units, from 0
 * @param water how often the side of the water is cleaned
 * @param condenser how often condensers are brushed
 * @param calls what calls cost under it
 */
public record Choice(long planned, Care water, Care condenser, CallTable calls) {

    /** Checks what was entered. */
    public static Checked<Choice> of(long planned, Care water, Care condenser, CallTable calls, Place place) {
        return planned < 0
                ? Checked.faulty(new Problem(Code.OUT_OF_RANGE, place, "a planned price below 0", "0 or more"))
                : Checked.sound(new Choice(planned, water, condenser, calls));
    }

    public Choice {
        Check.that(planned >= 0, "a planned price of " + planned);
    }
}
