package icequill.planner;

import icequill.problem.Check;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that is to be done on a visit.
 *
 * @param walks between the machines, all that the tasks name among them
 * @param neverBothOff pairs of machines of which one must go on making ice while the other is off
 * @param tasks at least one
 */
public record VisitWork(WalkTimes walks, List<Pair> neverBothOff, List<MachineTask> tasks) {

    /** Two machines, by id. */
    public record Pair(String one, String other) {

        private Pair sorted() {
            List<String> both = Stream.of(one, other).sorted().toList();
            return new Pair(both.getFirst(), both.getLast());
        }
    }

    public VisitWork {
        neverBothOff = List.copyOf(neverBothOff);
        tasks = List.copyOf(tasks);
        Check.that(!tasks.isEmpty(), "no task");
        for (MachineTask task : tasks) {
            Check.that(walks.machines().contains(task.machine()), "no such machine: " + task.machine());
        }
    }

    /** The same with machines by id and tasks by machine and order, so that nothing depends on how they were listed. */
    VisitWork sorted() {
        WalkTimes sorted = walks.sorted();
        List<MachineTask> byMachine = tasks.stream().sorted(Comparator.comparing(MachineTask::machine)
                .thenComparingInt(MachineTask::order).thenComparing(MachineTask::name).thenComparing(MachineTask::state)
                .thenComparingInt(MachineTask::attended).thenComparingInt(MachineTask::unattended)
                .thenComparingInt(MachineTask::people)).toList();
        return new VisitWork(sorted, neverBothOff.stream().map(Pair::sorted).distinct()
                .sorted(Comparator.comparing(Pair::one).thenComparing(Pair::other)).toList(), byMachine);
    }

    List<MachineTask> tasksAt(String machine) {
        return tasks.stream().filter(task -> task.machine().equals(machine)).toList();
    }
}
