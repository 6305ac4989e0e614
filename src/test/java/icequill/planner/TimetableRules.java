package icequill.planner;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import java.util.Comparator;
import java.util.List;

/** Every hard rule, asked of a finished timetable, without the numbers that it was made from. */
record TimetableRules(VisitWork work, Crew crew, Timetable table) {

    static void check(VisitWork work, int crew, Timetable table) {
        check(work, new Crew(crew), table);
    }

    static void check(VisitWork work, Crew crew, Timetable table) {
        new TimetableRules(work, crew, table).check();
    }

    private void check() {
        assertThat(table.entries().stream().filter(entry -> entry.kind() == Kind.TASK)).hasSameSizeAs(work.tasks());
        assertThat(table.minutes()).isEqualTo(table.entries().stream().mapToInt(Entry::end).max().orElse(0));
        assertThat(table.bound()).isBetween(0, table.minutes());
        for (PlanTask task : work.tasks()) {
            Entry entry = of(task);
            assertThat(entry.end() - entry.start()).isEqualTo(task.attended());
            assertThat(entry.people()).hasSize(task.attended() == 0 ? 0 : task.people()).doesNotHaveDuplicates()
                    .allMatch(person -> person >= 0 && person < crew.size())
                    .allMatch(person -> task.needs().stream()
                            .allMatch(need -> crew.qualified().get(person).contains(need)));
            task.timer().ifPresent(timer -> timer(task, entry));
            work.tasks().stream().filter(other -> other.machine().equals(task.machine()))
                    .forEach(other -> sequence(task, other));
        }
        int walked = 0;
        for (int person = 0; person < crew.size(); person++) {
            walked += walked(person);
        }
        assertThat(table.walking()).isEqualTo(walked);
        work.neverBothOff().forEach(this::pair);
        work.tasks().stream().filter(task -> task.dust() == DustLevel.RAISES).forEach(this::dust);
    }

    private Entry of(PlanTask task) {
        return table.entries().stream().filter(entry -> entry.kind() == Kind.TASK
                && entry.machine().equals(task.machine()) && entry.task().equals(task.name())).findFirst()
                .orElseThrow();
    }

    private int over(PlanTask task) {
        return of(task).end() + Math.max(task.unattended(), task.timer().map(timer -> timer.least()).orElse(0));
    }

    private void timer(PlanTask pour, Entry entry) {
        PlanTask flush = work.tasks().stream()
                .filter(task -> task.machine().equals(pour.machine()) && task.flushes() && task.order() > pour.order())
                .min(Comparator.comparingInt(PlanTask::order)).orElseThrow();
        assertThat(of(flush).start()).isBetween(entry.end() + pour.timer().orElseThrow().least(),
                entry.start() + pour.timer().orElseThrow().most());
        int last = work.tasks().stream()
                .filter(task -> task.machine().equals(pour.machine()) && task.state() == MachineState.CIRCULATING)
                .mapToInt(this::over).max().orElse(0);
        work.tasks().stream().filter(
                task -> task.machine().equals(pour.machine()) && task.state() == MachineState.DE_ENERGIZED)
                .forEach(task -> assertThat(of(task).end() <= entry.start() || of(task).start() >= last).isTrue());
    }

    private void sequence(PlanTask one, PlanTask other) {
        if (one.order() < other.order()) {
            assertThat(of(other).start()).as(one.name() + " before " + other.name())
                    .isGreaterThanOrEqualTo(other.state() == MachineState.ANY ? of(one).end() : over(one));
        }
        boolean states = one.state() != other.state() && one.state() != MachineState.ANY
                && other.state() != MachineState.ANY;
        if (one.order() == other.order() && states) {
            assertThat(of(other).start() >= over(one) || of(one).start() >= over(other)).isTrue();
        }
    }

    private int walked(int person) {
        List<Entry> mine = table.entries().stream().filter(entry -> entry.people().contains(person))
                .sorted(Comparator.comparingInt(Entry::start).thenComparingInt(Entry::end)).toList();
        int walked = 0;
        for (int i = 1; i < mine.size(); i++) {
            int walk = walk(mine.get(i - 1).machine(), mine.get(i).machine());
            assertThat(mine.get(i).start()).isGreaterThanOrEqualTo(mine.get(i - 1).end() + walk);
            walked += walk;
        }
        return walked;
    }

    private int walk(String from, String to) {
        List<String> machines = work.walks().machines();
        return work.walks().between(machines.indexOf(from), machines.indexOf(to));
    }

    /** From when to when a machine makes no ice; to the end of days when nobody starts it again. */
    private int[] off(String machine) {
        List<PlanTask> tasks = work.tasksAt(machine);
        int from = Integer.MAX_VALUE;
        int order = -1;
        for (PlanTask task : tasks) {
            if (task.state() == MachineState.CIRCULATING || task.state() == MachineState.DE_ENERGIZED) {
                from = Math.min(from, of(task).start());
                order = Math.max(order, task.order());
            }
        }
        int last = order;
        int until = tasks.stream().filter(task -> task.state() == MachineState.MAKING_ICE && task.order() > last)
                .mapToInt(task -> of(task).end()).min().orElse(Integer.MAX_VALUE);
        return new int[]{from, until};
    }

    private void pair(VisitWork.Pair pair) {
        int[] one = off(pair.one());
        int[] other = off(pair.other());
        assertThat(one[1] <= other[0] || other[1] <= one[0]).as("both off").isTrue();
    }

    private void dust(PlanTask dusty) {
        for (String machine : work.walks().machines()) {
            List<PlanTask> clean = work.tasksAt(machine).stream().filter(task -> task.dust() == DustLevel.SPOILED)
                    .toList();
            if (!clean.isEmpty() && walk(dusty.machine(), machine) == 0) {
                int from = clean.stream().mapToInt(task -> of(task).start()).min().orElseThrow();
                int until = clean.stream().mapToInt(this::over).max().orElseThrow();
                assertThat(over(dusty) <= from || of(dusty).start() >= until).isTrue();
                if (machine.equals(dusty.machine())) {
                    assertThat(of(dusty).end()).isLessThanOrEqualTo(from);
                }
            }
        }
    }
}
