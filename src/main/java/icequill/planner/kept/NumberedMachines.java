package icequill.planner.kept;

import icequill.planner.MachineTask;
import icequill.planner.VisitWork;
import icequill.planner.WalkTimes;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Numbers machines by the order of their names, so that the same work at another site is the same question. */
final class NumberedMachines {

    /** All numbers have as many figures, so that they sort as the names do. */
    private static final int FIRST = 10_000;

    private NumberedMachines() {
    }

    /** The same work, which has the same timetable but for the names; as it is where several sets of machines are sorted by them. */
    static VisitWork of(VisitWork work) {
        if (work.neverAllOff().size() > 1) {
            return work;
        }
        List<String> sorted = work.walks().machines().stream().sorted().toList();
        Map<String, String> numbers = new HashMap<>();
        IntStream.range(0, sorted.size()).forEach(i -> numbers.put(sorted.get(i), Integer.toString(FIRST + i)));
        return new VisitWork(walks(work.walks(), numbers),
                work.neverBothOff().stream()
                        .map(pair -> new VisitWork.Pair(number(pair.one(), numbers), number(pair.other(), numbers)))
                        .toList(),
                work.neverAllOff().stream()
                        .map(machines -> Set.copyOf(machines.stream().map(name -> number(name, numbers)).toList()))
                        .toList(),
                work.tasks().stream().map(task -> task(task, number(task.machine(), numbers))).toList());
    }

    private static String number(String name, Map<String, String> numbers) {
        return numbers.getOrDefault(name, name);
    }

    private static WalkTimes walks(WalkTimes walks, Map<String, String> numbers) {
        List<String> machines = walks.machines();
        return WalkTimes.of(machines.stream().map(name -> number(name, numbers)).toList(), 0,
                machines.stream().flatMap(one -> machines.stream().filter(other -> !other.equals(one))
                        .map(other -> new WalkTimes.Walk(number(one, numbers), number(other, numbers),
                                walks.walk(one, other))))
                        .toList());
    }

    private static MachineTask task(MachineTask task, String machine) {
        return new MachineTask(machine, task.name(), task.state(), task.order(), task.people(), task.needs(),
                task.attended(), task.unattended(), task.timer(), task.flushes(), task.dust(), task.accompanied(),
                task.place());
    }
}
