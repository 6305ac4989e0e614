package icequill.work;

import icequill.problem.Check;
import java.util.List;
import java.util.Optional;

/**
 * How a task is carried out, beyond its minutes.
 *
 * @param flushes full ones, each with clean water that drains completely
 * @param readings to be written down
 */
public record Procedure(Optional<Timer> timer, int flushes, List<Reading> readings) {

    public static final Procedure NONE = new Procedure(Optional.empty(), 0, List.of());

    /** Minutes that a chemical circulates: long enough to work, not so long that it eats the plating. */
    public record Timer(int least, int most) {
        public Timer {
            Check.inRange(least, 0, most, "least");
        }
    }

    public Procedure {
        readings = List.copyOf(readings);
    }

    /** Whether a chemical circulates or is flushed out. */
    public boolean needsPump() {
        return timer.isPresent() || flushes > 0;
    }
}
