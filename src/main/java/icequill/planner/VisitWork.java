package icequill.planner;

import icequill.problem.Check;
import java.util.List;

/**
 * All that is to be done on a visit.
 *
 * @param walks between the machines, all that the tasks name among them
 * @param neverBothOff pairs of machines of which one must go on making ice while the other is off
 * @param tasks at least one
 */
public record VisitWork(Walks walks, List<Pair> neverBothOff, List<PlanTask> tasks) {

    /** Two machines, by id. */
    public record Pair(String one, String other) {}

    public VisitWork {
        neverBothOff = List.copyOf(neverBothOff);
        tasks = List.copyOf(tasks);
        Check.that(!tasks.isEmpty(), "no task");
        for (PlanTask task : tasks) {
            Check.that(walks.machines().contains(task.machine()), "no such machine: " + task.machine());
        }
    }

    List<PlanTask> tasksAt(String machine) {
        return tasks.stream().filter(task -> task.machine().equals(machine)).toList();
    }
}
