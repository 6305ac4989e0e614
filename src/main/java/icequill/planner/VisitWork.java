package icequill.planner;

import icequill.problem.Check;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * All that is to be done on a visit.
 *
 * @param walks between the machines, all that the tasks name among them
 * @param neverBothOff pairs of machines of which one must go on making ice while the other is off
 * @param neverAllOff sets of two or more machines of which one must go on making ice while the others are off
 * @param tasks at least one
 */
public record VisitWork(WalkTimes walks, List<Pair> neverBothOff, List<Set<String>> neverAllOff,
        List<MachineTask> tasks) {

    /** Two machines, by id. */
    public record Pair(String one, String other) {

        private Pair sorted() {
            List<String> both = Stream.of(one, other).sorted().toList();
            return new Pair(both.getFirst(), both.getLast());
        }
    }

    public VisitWork {
        neverBothOff = List.copyOf(neverBothOff);
        neverAllOff = neverAllOff.stream().map(Set::copyOf).toList();
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
                .thenComparingInt(MachineTask::people).thenComparing(MachineTask::dust)
                .thenComparing(MachineTask::accompanied)
                .thenComparing(task -> task.needs().stream().sorted().toList().toString())).toList();
        return new VisitWork(sorted, neverBothOff.stream().map(Pair::sorted).distinct()
                .sorted(Comparator.comparing(Pair::one).thenComparing(Pair::other)).toList(),
                neverAllOff.stream().distinct().sorted(Comparator.comparing(VisitWork::listed)).toList(), byMachine);
    }

    private static String listed(Set<String> machines) {
        return machines.stream().sorted().collect(Collectors.joining(" "));
    }

    /**
     * The works that heed a pair of each set of machines that are never all off, in all ways to choose them: machines are never all off
     * at a time where two of them never are, for their times off are spans, and spans of which each two overlap overlap all.
     */
    List<VisitWork> choices() {
        if (neverAllOff.isEmpty()) {
            return List.of(this);
        }
        List<Set<String>> rest = neverAllOff.subList(1, neverAllOff.size());
        List<String> machines = neverAllOff.getFirst().stream().sorted().toList();
        return IntStream.range(0, machines.size()).boxed()
                .flatMap(one -> IntStream.range(one + 1, machines.size())
                        .mapToObj(other -> new Pair(machines.get(one), machines.get(other))))
                .flatMap(pair -> new VisitWork(walks,
                        Stream.concat(neverBothOff.stream(), Stream.of(pair)).distinct().toList(), rest, tasks)
                        .choices().stream())
                .toList();
    }

    List<MachineTask> tasksAt(String machine) {
        return tasks.stream().filter(task -> task.machine().equals(machine)).toList();
    }
}
