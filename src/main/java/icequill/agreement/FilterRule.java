package icequill.agreement;

import icequill.problem.Check;
import icequill.problem.Place;

/**
 * How often water filters are changed where nothing measured says sooner.
 *
 * @param material by id, one of it for each machine
 * @param months from 1 to 12 that a filter may stay in
 */
public record FilterRule(String material, int months, Place place) {

    public FilterRule {
        Check.inRange(months, 1, 12, "months of a filter");
    }

    /** Whether a filter is due on a visit: it would otherwise be too old before the next one. */
    boolean isDue(int monthsSinceChange, int monthsToNextVisit) {
        return monthsSinceChange + monthsToNextVisit > months;
    }
}
