package icequill.agreement;

import icequill.party.Machine;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.Task;
import java.util.Comparator;
import java.util.List;

/**
 * What is done to each machine on a visit.
 *
 * @param tasks by id
 */
public record Scope(String id, Wording name, Kind kind, List<String> tasks, Place place) {

    /** How far a visit goes. */
    public enum Kind {
        /** All that touches water and ice is descaled and sanitized. */
        FULL_CLEAN,
        /** Condenser, filter, bin and an inspection between full cleans. */
        LIGHT_VISIT
    }

    public Scope {
        tasks = List.copyOf(tasks);
    }

    public boolean isFullClean() {
        return kind == Kind.FULL_CLEAN;
    }

    /** Those of the known tasks that are done to a machine, in the order of a visit. */
    public List<Task> tasksOn(Machine machine, List<Task> known) {
        return known.stream().filter(task -> tasks.contains(task.id()) && task.suits(machine))
                .sorted(Comparator.comparingInt(Task::order)).toList();
    }
}
