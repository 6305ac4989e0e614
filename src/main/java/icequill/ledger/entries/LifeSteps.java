package icequill.ledger.entries;

import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.problem.Check;
import java.time.Instant;
import org.jdbi.v3.core.Handle;

/** Adds steps to what lives, and leaves a trail. Whether a step may follow is for the caller to know. */
public final class LifeSteps {

    private final LifeRows rows;
    private final Instant now;
    private final Trail trail;

    public LifeSteps(Handle handle, Instant now, Trail trail) {
        this.rows = new LifeRows(handle);
        this.now = now;
        this.trail = trail;
    }

    /**
     * Notes a step.
     *
     * @throws IllegalArgumentException when it is not the one after the last
     */
    public void add(LifeStep step) {
        Check.that(step.position() == rows.of(step.kind(), step.id()).size() + 1, "a step follows the last one");
        Noted.of(step, TrailEvent.RECORDED).in(trail, () -> rows.insert(step, now));
    }
}
