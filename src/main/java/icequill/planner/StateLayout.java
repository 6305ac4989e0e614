package icequill.planner;

import icequill.work.MachineState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a {@link PartialSchedule} keeps of the past, by position: when each person is free; for each machine when it is ready for the tasks of
 * its present group (tasks of equal order) and of the next, each for tasks that may use a wait and for others; when each set of
 * tasks that excludes another is over; when the whole is over; when each running timer was started.
 */
final class StateLayout {

    /** Columns of a machine: two for its present group, and from {@link #NEXT_GROUP} on two for the next. */
    static final int PER_MACHINE = 4;
    static final int NEXT_GROUP = 2;

    private final Network network;
    private final Crew crew;
    private final int[] pouring;
    private final int[] flush;
    private final int[] timerOf;
    private final int[] flushedBy;
    private final Precedence precedence;
    private final int[][] before;
    private final int[][] overWith;
    private final int[] ready;
    private final boolean[][] fit;
    private final int[] most;
    private final int people;
    private final int machines;
    private final int end;
    private final int width;

    StateLayout(Network network, Crew crew) {
        this.network = network;
        this.crew = crew;
        int size = network.size();
        people = crew.size();
        fit = network.fit(crew);
        machines = network.walks.machines().size();
        timerOf = new int[size];
        flushedBy = new int[size];
        precedence = new Precedence(network);
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
        }
        flush = pours.stream().mapToInt(network::flushAfter).toArray();
        pouring = pours.stream().mapToInt(Integer::intValue).toArray();
        most = pours.stream().mapToInt(pour -> network.tasks.get(pour).timer().orElseThrow().most()).toArray();
        end = exclusion(network.exclusions.size());
        width = end + 3 + pouring.length;
        before = new int[size][];
        overWith = new int[size][];
        ready = new int[size];
        for (int task = 0; task < size; task++) {
            before[task] = exclusions(task, true);
            overWith[task] = exclusions(task, false);
            boolean usesWaits = network.tasks.get(task).state() == MachineState.ANY;
            ready[task] = machine(network.machine[task]) + (usesWaits ? 0 : 1);
        }
    }

    /** The columns of the sets that must be over before a task, or of those it belongs to. */
    private int[] exclusions(int task, boolean others) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < network.exclusions.size(); i++) {
            Exclusion exclusion = network.exclusions.get(i);
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
        return people;
    }

    /** Whether somebody may be given a task. */
    boolean isFit(int person, int task) {
        return fit[person][task];
    }

    /** Whether two people may be given the same tasks. */
    boolean areAlike(int one, int other) {
        return crew.members().get(one).equals(crew.members().get(other));
    }

    LowerBounds bounds() {
        return new LowerBounds(network, crew);
    }

    /** The minute at which somebody comes. */
    int from(int person) {
        return crew.members().get(person).from();
    }

    /** The minute by which somebody has left. */
    int until(int person) {
        return crew.members().get(person).until();
    }

    int machines() {
        return machines;
    }

    int timers() {
        return pouring.length;
    }

    int rows() {
        return 1 + timers();
    }

    int width() {
        return width;
    }

    int free(int person) {
        return person;
    }

    /** The first of a machine's columns. */
    int machine(int machine) {
        return people + PER_MACHINE * machine;
    }

    private int exclusion(int which) {
        return machine(machines) + 2 * which;
    }

    int end() {
        return end;
    }

    int newest() {
        return end + 1;
    }

    /** What was walked, where that counts; otherwise always 0. */
    int walked() {
        return end + 2;
    }

    int pour(int timer) {
        return end + 3 + timer;
    }

    int ready(int task) {
        return ready[task];
    }

    /** The columns of the sets that must be over before a task. */
    int[] overBefore(int task) {
        return before[task];
    }

    /** The columns of the sets that a task belongs to. */
    int[] overWith(int task) {
        return overWith[task];
    }

    int timerOf(int task) {
        return timerOf[task];
    }

    int flushedBy(int task) {
        return flushedBy[task];
    }

    int flush(int timer) {
        return flush[timer];
    }

    int most(int timer) {
        return most[timer];
    }

    Precedence precedence() {
        return precedence;
    }
}
