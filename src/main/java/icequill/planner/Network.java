package icequill.planner;

import icequill.work.MachineState;
import icequill.work.Procedure;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A visit as numbers: tasks by position, sorted by machine and order, and what lies between their starts.
 */
final class Network {

    /** No lag: far enough from any real one that sums of a few cannot reach one. */
    static final int NONE = Integer.MIN_VALUE / 4;

    final List<MachineTask> tasks;
    final WalkTimes walks;
    final int[] machine;
    final int[] duration;
    final int[] pause;
    final int[] people;
    /** At least so many minutes from the start of the first to the start of the second; {@link #NONE} if nothing is said. */
    final int[][] lag;
    /** No task starts before its head, and the visit goes on for its tail from its start. */
    final int[] head;
    final int[] tail;
    final List<Exclusion> exclusions;

    private Network(VisitWork work) {
        walks = work.walks();
        List<String> machines = walks.machines();
        tasks = work.tasks().stream().sorted(Comparator
                .comparingInt((MachineTask task) -> machines.indexOf(task.machine()))
                .thenComparingInt(MachineTask::order))
                .toList();
        int size = tasks.size();
        machine = tasks.stream().mapToInt(task -> machines.indexOf(task.machine())).toArray();
        duration = tasks.stream().mapToInt(MachineTask::attended).toArray();
        pause = tasks.stream().mapToInt(MachineTask::pause).toArray();
        people = tasks.stream().mapToInt(task -> task.attended() == 0 ? 0 : task.people()).toArray();
        lag = new int[size][size];
        head = new int[size];
        tail = new int[size];
        order();
        timers();
        close();
        exclusions = new Exclusions(tasks, machine, walks).of(work.neverBothOff());
    }

    IntStream all() {
        return IntStream.range(0, size());
    }

    /** Of work that {@link WorkCheck} found nothing wrong with. */
    static Network of(VisitWork work) {
        return new Network(work);
    }

    int size() {
        return machine.length;
    }

    /** What a task takes of the visit from its start on, its wait included. */
    int whole(int task) {
        return duration[task] + pause[task];
    }

    /** Whether the first always starts before the second can. */
    boolean before(int first, int second) {
        return lag[first][second] > 0 || (lag[first][second] == 0 && first < second);
    }

    private void order() {
        for (int i = 0; i < size(); i++) {
            Arrays.fill(lag[i], NONE);
            lag[i][i] = 0;
            for (int j = i + 1; j < size() && machine[j] == machine[i]; j++) {
                if (tasks.get(i).order() < tasks.get(j).order()) {
                    lag[i][j] = tasks.get(j).state() == MachineState.ANY ? duration[i] : whole(i);
                }
            }
        }
    }

    private void timers() {
        for (int i = 0; i < size(); i++) {
            Optional<Procedure.Timer> timer = tasks.get(i).timer();
            int flush = flushAfter(i);
            if (timer.isPresent() && flush >= 0) {
                lag[flush][i] = -timer.get().most();
            }
        }
    }

    /** The first task at the machine of a task that flushes what it poured in; -1 if there is none. */
    int flushAfter(int task) {
        for (int j = task + 1; j < size() && machine[j] == machine[task]; j++) {
            if (tasks.get(j).flushes() && tasks.get(j).order() > tasks.get(task).order()) {
                return j;
            }
        }
        return -1;
    }

    /** The longest ways between all starts, and with them heads and tails. */
    private void close() {
        for (int by = 0; by < size(); by++) {
            for (int from = 0; from < size(); from++) {
                for (int to = 0; to < size() && lag[from][by] > NONE; to++) {
                    if (lag[by][to] > NONE) {
                        lag[from][to] = Math.max(lag[from][to], lag[from][by] + lag[by][to]);
                    }
                }
            }
        }
        for (int i = 0; i < size(); i++) {
            for (int j = 0; j < size(); j++) {
                if (lag[j][i] > NONE) {
                    head[i] = Math.max(head[i], lag[j][i]);
                    tail[j] = Math.max(tail[j], lag[j][i] + whole(i));
                }
            }
        }
    }

    /** Whether either is over before the other starts. */
    boolean excludes(int one, int other) {
        return exclusions.stream().anyMatch(exclusion -> exclusion.parts(one, other));
    }

    /** By person and task whether he may be given it. */
    boolean[][] fit(Crew crew) {
        boolean[][] fit = new boolean[crew.size()][size()];
        for (int person = 0; person < fit.length; person++) {
            for (int task = 0; task < size(); task++) {
                fit[person][task] = crew.isFit(person, tasks.get(task).needs());
            }
        }
        return fit;
    }

    /** The first task of each machine, and after them how many tasks there are. */
    int[] firstOfEach() {
        return IntStream.rangeClosed(0, walks.machines().size())
                .map(where -> (int) Arrays.stream(machine).filter(each -> each < where).count()).toArray();
    }

    IntStream at(int where) {
        return all().filter(task -> machine[task] == where);
    }
}
