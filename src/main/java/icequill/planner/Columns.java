package icequill.planner;

import icequill.work.MachineState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a {@link Draft} keeps of the past, by position: when each person is free; for each machine when it is ready for the tasks of
 * its present group (tasks of equal order) and of the next, each for tasks that may use a wait and for others; when each set of
 * tasks that excludes another is over; when the whole is over; when each running timer was started.
 */
final class Columns {

    private static final int PER_MACHINE = 4;

    private final Network network;
    private final int crew;
    private final int[] pouring;
    private final int[] flush;
    private final int[] timerOf;
    private final int[] flushedBy;
    private final int[] groupEnd;
    private final int[] groupStart;
    private final int[][] before;
    private final int[][] raises;
    private final List<Integer> inTurn;

    Columns(Network network, Crew crew) {
        this.network = network;
        this.crew = crew.size();
        int size = network.size();
        timerOf = new int[size];
        flushedBy = new int[size];
        groupStart = new int[size];
        groupEnd = new int[size];
        Arrays.fill(timerOf, -1);
        Arrays.fill(flushedBy, -1);
        List<Integer> pours = new ArrayList<>();
        for (int task = 0; task < size; task++) {
            int flush = network.tasks.get(task).timer().isPresent() ? network.flushAfter(task) : -1;
            if (flush >= 0) {
                timerOf[task] = pours.size();
                flushedBy[flush] = pours.size();
                pours.add(task);
            }
            groupStart[task] = task > 0 && sameGroup(task - 1, task) ? groupStart[task - 1] : task;
        }
        for (int task = size - 1; task >= 0; task--) {
            groupEnd[task] = task + 1 < size && sameGroup(task, task + 1) ? groupEnd[task + 1] : task + 1;
        }
        flush = pours.stream().mapToInt(network::flushAfter).toArray();
        pouring = pours.stream().mapToInt(Integer::intValue).toArray();
        inTurn = IntStream.range(0, machines()).boxed().sorted(Comparator.comparing(this::isLast)).toList();
        before = new int[size][];
        raises = new int[size][];
        for (int task = 0; task < size; task++) {
            before[task] = exclusions(task, true);
            raises[task] = exclusions(task, false);
        }
    }

    private boolean sameGroup(int one, int other) {
        return network.machine[one] == network.machine[other]
                && network.tasks.get(one).order() == network.tasks.get(other).order();
    }

    /** The columns of the sets that must be over before a task, or of those it belongs to. */
    private int[] exclusions(int task, boolean others) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < network.exclusions.size(); i++) {
            Network.Exclusion exclusion = network.exclusions.get(i);
            if (exclusion.one().contains(task)) {
                found.add(exclusion(i) + (others ? 1 : 0));
            }
            if (exclusion.other().contains(task)) {
                found.add(exclusion(i) + (others ? 0 : 1));
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    Network network() {
        return network;
    }

    int crew() {
        return crew;
    }

    int machines() {
        return network.walks.machines().size();
    }

    int timers() {
        return pouring.length;
    }

    int rows() {
        return 1 + timers();
    }

    int width() {
        return end() + 3 + timers();
    }

    int free(int person) {
        return person;
    }

    private int machine(int machine) {
        return crew + PER_MACHINE * machine;
    }

    private int exclusion(int which) {
        return machine(machines()) + 2 * which;
    }

    int end() {
        return exclusion(network.exclusions.size());
    }

    int newest() {
        return end() + 1;
    }

    /** What was walked, where that counts; otherwise always 0. */
    int walked() {
        return end() + 2;
    }

    int pour(int timer) {
        return end() + 3 + timer;
    }

    int ready(int task) {
        return machine(network.machine[task]) + (usesWaits(task) ? 0 : 1);
    }

    private boolean usesWaits(int task) {
        return network.tasks.get(task).state() == MachineState.ANY;
    }

    int[] overBefore(int task) {
        return before[task];
    }

    int timerOf(int task) {
        return timerOf[task];
    }

    int flushedBy(int task) {
        return flushedBy[task];
    }

    int pouring(int timer) {
        return pouring[timer];
    }

    int flush(int timer) {
        return flush[timer];
    }

    int most(int timer) {
        return network.tasks.get(pouring[timer]).timer().orElseThrow().most();
    }

    int groupStart(int task) {
        return groupStart[task];
    }

    int groupEnd(int task) {
        return groupEnd[task];
    }

    /** A task was placed: what it makes later. */
    void raise(int[] way, int from, int task, int over, int whole) {
        int next = from + machine(network.machine[task]) + 2;
        way[next] = Math.max(way[next], over);
        way[next + 1] = Math.max(way[next + 1], whole);
        for (int column : raises[task]) {
            way[from + column] = Math.max(way[from + column], whole);
        }
        way[from + end()] = Math.max(way[from + end()], whole);
    }

    /** When the last task of a group was placed, the next group's turn has come. */
    void closeGroup(int[] way, int task, BitSet done) {
        if (done.nextClearBit(groupStart[task]) < groupEnd[task]) {
            return;
        }
        for (int row = 0; row < rows(); row++) {
            int present = row * width() + machine(network.machine[task]);
            for (int i = 0; i < 2; i++) {
                way[present + i] = Math.max(way[present + i], way[present + 2 + i]);
                way[present + 2 + i] = row == 0 ? 0 : Network.NONE;
            }
        }
    }

    /** Nothing can begin at a machine sooner than somebody is there, and nothing at all when its tasks are done. */
    void settle(int[] way, int from, int machine, int soonest, BitSet done) {
        boolean over = isOver(machine, done);
        for (int i = 0; i < PER_MACHINE; i++) {
            int column = from + machine(machine) + i;
            way[column] = over ? Network.NONE : i < 2 ? Math.max(way[column], soonest) : way[column];
        }
    }

    boolean isOver(int machine, BitSet done) {
        for (int task = 0; task < network.size(); task++) {
            if (network.machine[task] == machine && !done.get(task)) {
                return false;
            }
        }
        return true;
    }

    /** The machines in the order in which they can be done one by one: those that must go off last come last. */
    List<Integer> inTurn() {
        return inTurn;
    }

    private boolean isLast(int machine) {
        return network.exclusions.stream().anyMatch(exclusion -> !exclusion.free()
                && exclusion.other().stream().anyMatch(task -> network.machine[task] == machine));
    }

    /** Whether a task is next at its machine, and no set of tasks is open that excludes it. */
    boolean isReady(int task, BitSet done) {
        if (done.get(task)) {
            return false;
        }
        for (int earlier = groupStart[task] - 1; earlier >= 0
                && network.machine[earlier] == network.machine[task]; earlier--) {
            if (!done.get(earlier)) {
                return false;
            }
        }
        for (Network.Exclusion exclusion : network.exclusions) {
            if ((exclusion.one().contains(task) && exclusion.free() && isOpen(exclusion.other(), done))
                    || (exclusion.other().contains(task) && isBlocked(exclusion, done))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBlocked(Network.Exclusion exclusion, BitSet done) {
        return exclusion.free()
                ? isOpen(exclusion.one(), done)
                : !exclusion.one().stream().allMatch(done::get);
    }

    private static boolean isOpen(Set<Integer> tasks, BitSet done) {
        long placed = tasks.stream().filter(done::get).count();
        return placed > 0 && placed < tasks.size();
    }
}
