package icequill.planner;

import icequill.problem.Check;

/**
 * How much is tried for a shorter timetable, counted so that it does not depend on how fast a machine is.
 *
 * @param nodes how many placings of a task are tried, from 1
 * @param width how many drafts are kept at most, from 1
 */
public record Effort(int nodes, int width) {

    /** Enough to prove most visits to three machines. */
    public static final Effort USUAL = new Effort(1_000_000, 1 << 14);

    /** A task of a large visit takes longer to be placed, so fewer are tried: some seconds in all. */
    private static final int SHARED = 45_000_000;

    /** The usual effort, less where there are many tasks. */
    public static Effort of(VisitWork work) {
        return new Effort(Math.min(USUAL.nodes(), SHARED / work.tasks().size()), USUAL.width());
    }

    public Effort {
        Check.inRange(nodes, 1, Integer.MAX_VALUE, "nodes");
        Check.inRange(width, 1, 1 << 20, "width");
    }
}
