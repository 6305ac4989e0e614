package icequill.planner;

import icequill.problem.Place;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import icequill.work.Qualification;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Visits to be planned, in short. */
final class Visits {

    static final Procedure.Timer TIMER = new Procedure.Timer(20, 25);

    private Visits() {
    }

    static MachineTask task(String machine, String name, MachineState state, int order, int attended, int unattended) {
        return new MachineTask(machine, name, state, order, 1, Set.of(), attended, unattended, Optional.empty(), false,
                DustLevel.NEITHER, false,
                Place.NOWHERE);
    }

    static MachineTask pour(String machine, int order, int attended, int unattended, Procedure.Timer timer) {
        return new MachineTask(machine, "pour", MachineState.CIRCULATING, order, 1, Set.of(), attended, unattended,
                Optional.of(timer), false, DustLevel.NEITHER, false, Place.NOWHERE);
    }

    static MachineTask flush(String machine, int order, int attended) {
        return new MachineTask(machine, "flush", MachineState.CIRCULATING, order, 1, Set.of(), attended, 0,
                Optional.empty(), true,
                DustLevel.NEITHER, false, Place.NOWHERE);
    }

    static MachineTask with(MachineTask task, int people, DustLevel dust) {
        return new MachineTask(task.machine(), task.name(), task.state(), task.order(), people, task.needs(),
                task.attended(),
                task.unattended(), task.timer(), task.flushes(), dust, task.accompanied(), task.place());
    }

    static MachineTask needing(MachineTask task, Set<Qualification> needs) {
        return new MachineTask(task.machine(), task.name(), task.state(), task.order(), task.people(), needs,
                task.attended(), task.unattended(), task.timer(), task.flushes(), task.dust(), task.accompanied(),
                task.place());
    }

    static MachineTask accompanied(MachineTask task) {
        return new MachineTask(task.machine(), task.name(), task.state(), task.order(), task.people(), task.needs(),
                task.attended(), task.unattended(), task.timer(), task.flushes(), task.dust(), true, task.place());
    }

    /** Off 4, pour 3, flushes 9, sanitizer in 2, wait 10, restart 4. */
    static List<MachineTask> wet(String machine, Procedure.Timer timer) {
        return List.of(task(machine, "off", MachineState.CIRCULATING, 20, 4, 0), pour(machine, 60, 3, 0, timer),
                flush(machine, 70, 9), task(machine, "sanitize", MachineState.CIRCULATING, 80, 2, 10),
                task(machine, "restart", MachineState.MAKING_ICE, 100, 4, 0));
    }

    /** The same with condenser 10 and bin 8. */
    static List<MachineTask> full(String machine) {
        List<MachineTask> tasks = new ArrayList<>(wet(machine, TIMER));
        tasks.add(task(machine, "condenser", MachineState.DE_ENERGIZED, 30, 10, 0));
        tasks.add(task(machine, "bin", MachineState.ANY, 90, 8, 0));
        return tasks;
    }

    /** A whole cleaning with readings, twelve tasks. */
    static List<MachineTask> cleaning(String machine) {
        List<MachineTask> tasks = new ArrayList<>(full(machine));
        tasks.add(task(machine, "read-before", MachineState.MAKING_ICE, 10, 5, 15));
        tasks.add(task(machine, "wash", MachineState.DE_ENERGIZED, 40, 12, 0));
        tasks.add(task(machine, "filter", MachineState.DE_ENERGIZED, 50, 8, 0));
        tasks.add(task(machine, "read-after", MachineState.MAKING_ICE, 110, 5, 15));
        tasks.add(task(machine, "sticker", MachineState.MAKING_ICE, 120, 2, 0));
        return tasks;
    }

    static List<String> names(int machines) {
        return IntStream.range(0, machines).mapToObj(i -> "m" + i).toList();
    }

    /** So many machines, each with a whole cleaning. */
    static VisitWork cleanings(int machines, int walk) {
        return work(walk, names(machines), names(machines).stream().flatMap(name -> cleaning(name).stream()).toList());
    }

    static VisitWork work(int walk, List<String> machines, List<MachineTask> tasks) {
        return new VisitWork(WalkTimes.of(machines, walk, List.of()), List.of(), List.of(), tasks);
    }

    static VisitWork neverBothOff(VisitWork work, String one, String other) {
        return new VisitWork(work.walks(),
                Stream.concat(work.neverBothOff().stream(), Stream.of(new VisitWork.Pair(one, other))).toList(),
                work.neverAllOff(), work.tasks());
    }
}
