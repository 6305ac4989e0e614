package icequill.forecast;

import icequill.problem.Check;

/**
 * A kind of call.
 *
 * @param share of the calls of its cause, from 0 to 1
 * @param charge in minor units, before tax, from 0
 */
public record CallKind(double share, long charge) {

    public CallKind {
        Check.that(share >= 0 && share <= 1, "a share of " + share);
        Check.that(charge >= 0, "a charge of " + charge);
    }
}
