package icequill.planner;

import icequill.problem.Check;

/**
 * How much is tried for a shorter timetable, counted so that it does not depend on how fast a machine is.
 *
 * @param nodes how many placings of a task are tried in layers of partial schedules, and from twice to six times as many in lists, from 1
 * @param width how many partial schedules a layer keeps at most, from 1
 */
public record Effort(int nodes, int width) {

    /** Enough to prove most visits to three machines; some seconds for as many as a dozen, and ten or more for hundreds. */
    public static final Effort USUAL = new Effort(1_000_000, 1 << 14);

    public Effort {
        Check.inRange(nodes, 1, Integer.MAX_VALUE, "nodes");
        Check.inRange(width, 1, 1 << 20, "width");
    }
}
