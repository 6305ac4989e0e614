package icequill.planner;

import icequill.problem.Check;

/**
 * The technicians who come, all alike.
 *
 * @param size from 1 to {@link #MOST}
 */
public record Crew(int size) {

    public static final int MOST = 6;

    public Crew {
        Check.inRange(size, 1, MOST, "size");
    }
}
