package icequill.agreement;

import icequill.money.Percent;
import icequill.problem.Check;

/**
 * Calls between the planned visits that cost nothing more.
 *
 * @param number in a year; none as a rule
 * @param loading added to what they are expected to cost, from 0
 */
public record IncludedCalls(int number, Percent loading) {

    public static final IncludedCalls NONE = new IncludedCalls(0, Percent.ZERO);

    public IncludedCalls {
        Check.that(number >= 0, "included calls: " + number);
    }
}
