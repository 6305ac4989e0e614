package icequill.agreement;

import icequill.problem.Check;
import icequill.problem.Place;
import java.util.Optional;

/**
 * How often water filters are changed where nothing measured says sooner.
 *
 * @param material by id, one of it for each machine
 * @param task by id, which changes it; empty when it is part of another
 * @param months from 1 to 12 that a filter may stay in
 */
public record FilterRule(String material, Optional<String> task, int months, Place place) {

    public FilterRule {
        Check.inRange(months, 1, 12, "months of a filter");
    }

    /** Whether a filter is due on a visit: it would otherwise be too old before the next one. */
    boolean isDue(int monthsSinceChange, int monthsToNextVisit) {
        return monthsSinceChange + monthsToNextVisit > months;
    }
}
