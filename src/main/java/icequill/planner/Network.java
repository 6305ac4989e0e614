package icequill.planner;

import icequill.work.DustLevel;
import icequill.work.MachineState;
import icequill.work.Procedure;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
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

    /**
     * Two sets of tasks, all of one of which are over, waits included, before any of the other starts.
     *
     * @param free whether either may come first; otherwise the one does
     */
    record Exclusion(Set<Integer> one, Set<Integer> other, boolean free) {}

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
        exclusions = exclusions(work);
    }

    private IntStream all() {
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

    private List<Exclusion> exclusions(VisitWork work) {
        List<Exclusion> found = new ArrayList<>();
        for (VisitWork.Pair pair : work.neverBothOff()) {
            int one = walks.machines().indexOf(pair.one());
            int other = walks.machines().indexOf(pair.other());
            if (restarts(off(one))) {
                add(found, off(one), off(other), restarts(off(other)));
            } else {
                add(found, off(other), off(one), false);
            }
        }
        for (int i = 0; i < size(); i++) {
            for (int j = i + 1; j < size() && machine[j] == machine[i]; j++) {
                if (tasks.get(i).clashes(tasks.get(j)) && tasks.get(i).order() == tasks.get(j).order()) {
                    add(found, new int[]{i}, new int[]{j}, true);
                }
            }
            if (tasks.get(i).dust() == DustLevel.RAISES) {
                dust(i, found);
            }
        }
        return List.copyOf(found);
    }

    /** Whether either is over before the other starts. */
    boolean excludes(int one, int other) {
        for (Exclusion exclusion : exclusions) {
            if ((exclusion.one().contains(one) && exclusion.other().contains(other))
                    || (exclusion.one().contains(other) && exclusion.other().contains(one))) {
                return true;
            }
        }
        return false;
    }

    private void dust(int raises, List<Exclusion> found) {
        for (int other = 0; other < walks.machines().size(); other++) {
            if (other != machine[raises] && walks.between(machine[raises], other) == 0) {
                add(found, new int[]{raises},
                        at(other).filter(task -> tasks.get(task).dust() == DustLevel.SPOILED).toArray(), true);
            }
        }
    }

    private static void add(List<Exclusion> found, int[] one, int[] other, boolean free) {
        if (one.length > 0 && other.length > 0) {
            found.add(new Exclusion(setOf(one), setOf(other), free));
        }
    }

    private static Set<Integer> setOf(int[] tasks) {
        return Arrays.stream(tasks).boxed().collect(Collectors.toUnmodifiableSet());
    }

    /** Whether a machine that goes off is started again; one that nobody starts goes off after the other is on again. */
    private boolean restarts(int[] off) {
        return off.length == 0 || tasks.get(off[off.length - 1]).state() == MachineState.MAKING_ICE;
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

    /** The tasks during which a machine makes no ice: from the first that stops it to the one that starts it again. */
    int[] off(int where) {
        int[] stopped = at(where).filter(task -> tasks.get(task).state().stopsIce()).toArray();
        if (stopped.length == 0) {
            return stopped;
        }
        int last = stopped[stopped.length - 1];
        int restart = at(where).filter(task -> task > last && tasks.get(task).state() == MachineState.MAKING_ICE)
                .findFirst().orElse(last);
        return at(where).filter(task -> task >= stopped[0] && task <= restart).toArray();
    }
}
