package icequill.bench;

import icequill.planner.ConstraintModel;
import icequill.planner.Crew;
import icequill.planner.Effort;
import icequill.planner.MachineTask;
import icequill.planner.Planner;
import icequill.planner.Timetable;
import icequill.planner.VisitWork;
import icequill.planner.WalkTimes;
import icequill.problem.Place;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long the timetable of whole cleanings takes to be found, twelve tasks a machine, two minutes between machines. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 0)
@Measurement(iterations = 3)
public class PlannerBenchmark {

    private static final int HORIZON = 190;

    @Param({"3", "6", "12"})
    private int machines;

    @Param({"1", "2"})
    private int crew;

    private VisitWork work = work(1);

    /** What was found, beside how long it took. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.EVENTS)
    public static class Found {
        public int minutes;
        public int bound;

        @Setup(Level.Iteration)
        public void nothing() {
            minutes = 0;
            bound = 0;
        }
    }

    @Setup
    public void visit() {
        work = work(machines);
    }

    /** As many machines as a constraint solver proves within seconds. */
    @State(Scope.Benchmark)
    public static class Two {
        @Param({"1", "2"})
        private int people;

        private final VisitWork work = work(2);
    }

    @Benchmark
    public int planOfTwo(Two two) {
        return Planner.timetable(two.work, new Crew(two.people), Effort.USUAL).orElseThrow().minutes();
    }

    /** The yardstick: the same visit as a model of Choco, which searches by starts and is told a horizon a little too long. */
    @Benchmark
    public int constraintSolverOfTwo(Two two) {
        return new ConstraintModel(two.work, two.people, HORIZON).shortest();
    }

    @Benchmark
    public Timetable plan(Found found) {
        Timetable table = Planner.timetable(work, new Crew(crew), Effort.USUAL).orElseThrow();
        found.minutes = table.minutes();
        found.bound = table.bound();
        return table;
    }

    private static VisitWork work(int machines) {
        List<String> names = new ArrayList<>();
        List<MachineTask> tasks = new ArrayList<>();
        for (int i = 0; i < machines; i++) {
            String name = "m" + i;
            names.add(name);
            task(tasks, name, "read-before", MachineState.MAKING_ICE, 5, 15);
            task(tasks, name, "stop-and-empty", MachineState.CIRCULATING, 6, 0);
            task(tasks, name, "brush-condenser", MachineState.DE_ENERGIZED, 10, 0);
            task(tasks, name, "wash-parts", MachineState.DE_ENERGIZED, 12, 0);
            task(tasks, name, "change-filter", MachineState.DE_ENERGIZED, 8, 0);
            task(tasks, name, "pour", MachineState.CIRCULATING, 3, 20);
            task(tasks, name, "flush", MachineState.CIRCULATING, 9, 0);
            task(tasks, name, "sanitize", MachineState.CIRCULATING, 2, 10);
            task(tasks, name, "clean-bin", MachineState.ANY, 8, 0);
            task(tasks, name, "restart", MachineState.MAKING_ICE, 4, 0);
            task(tasks, name, "read-after", MachineState.MAKING_ICE, 5, 15);
            task(tasks, name, "sticker", MachineState.MAKING_ICE, 2, 0);
        }
        return new VisitWork(WalkTimes.of(names, 2, List.of()), List.of(), List.of(), tasks);
    }

    private static void task(List<MachineTask> tasks, String machine, String name, MachineState state, int attended,
            int unattended) {
        boolean pour = name.equals("pour");
        tasks.add(new MachineTask(machine, name, state, tasks.size() + 1, 1, Set.of(), attended, unattended,
                pour ? Optional.of(new Procedure.Timer(20, 25)) : Optional.empty(), name.equals("flush"),
                DustLevel.NEITHER, false,
                Place.NOWHERE));
    }
}
