package icequill.request;

import java.util.List;
import java.util.Optional;

/**
 * What technicians ticked on a visit that runs.
 *
 * @param done each as {@code MACHINE TASK=10:42}, when the task was over, by the clock at the site
 * @param now from when on the rest is planned, as {@code 10:45}; the last time in {@code done} if left out
 */
public record TickedTimes(List<String> done, Optional<String> now) {

    public TickedTimes {
        done = List.copyOf(done);
    }

    public boolean areNone() {
        return done.isEmpty() && now.isEmpty();
    }
}
