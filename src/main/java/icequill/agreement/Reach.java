package icequill.agreement;

import icequill.problem.Check;

/**
 * How much an agreement looks after.
 *
 * @param machines of all its sites together, from 1
 * @param sites from 1
 */
public record Reach(int machines, int sites) {

    public Reach {
        Check.that(machines > 0 && sites > 0, "machines: " + machines + ", sites: " + sites);
    }
}
