package icequill.planner;

import java.util.Set;

/**
 * Two sets of tasks, all of one of which are over, waits included, before any of the other starts.
 *
 * @param free whether either may come first; otherwise the one does
 */
record Exclusion(Set<Integer> one, Set<Integer> other, boolean free) {

    /** Whether two tasks are in different sets of it. */
    boolean parts(int task, int second) {
        return (one.contains(task) && other.contains(second)) || (one.contains(second) && other.contains(task));
    }
}
