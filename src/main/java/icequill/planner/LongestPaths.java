package icequill.planner;

import java.util.Arrays;
import java.util.BitSet;

/**
 * The longest paths from the beginning of a visit, and from each pouring whose timer runs, to when people are free, machines ready and
 * the whole over: a row for each that they begin at, a column for each thing that {@link StateLayout} names.
 */
final class LongestPaths {

    private final StateLayout layout;
    private final Network network;
    private final int[] minutes;

    private LongestPaths(StateLayout layout, int[] minutes) {
        this.layout = layout;
        this.network = layout.network();
        this.minutes = minutes;
    }

    /** Of a visit on which nothing is placed yet. */
    static LongestPaths of(StateLayout layout) {
        int[] minutes = new int[layout.rows() * layout.width()];
        Arrays.fill(minutes, Network.NONE);
        Arrays.fill(minutes, 0, layout.width(), 0);
        for (int timer = 0; timer < layout.timers(); timer++) {
            minutes[layout.pour(timer)] = Network.NONE;
        }
        for (int person = 0; person < layout.crew(); person++) {
            minutes[layout.free(person)] = layout.from(person);
        }
        return new LongestPaths(layout, minutes);
    }

    LongestPaths copy() {
        return new LongestPaths(layout, minutes.clone());
    }

    private int at(int row, int column) {
        return minutes[row * layout.width() + column];
    }

    private void raise(int row, int column, int least) {
        int at = row * layout.width() + column;
        minutes[at] = Math.max(minutes[at], least);
    }

    private void set(int row, int column, int value) {
        minutes[row * layout.width() + column] = value;
    }

    private void forget(int row) {
        Arrays.fill(minutes, row * layout.width(), (row + 1) * layout.width(), Network.NONE);
    }

    int free(int row, int person) {
        return at(row, layout.free(person));
    }

    /** When the task placed last begins, before which none that comes later does. */
    int newest() {
        return minutes[layout.newest()];
    }

    /** When everything placed so far is over, waits included. */
    int end() {
        return minutes[layout.end()];
    }

    /** When the chemical of a timer that runs is poured in. */
    int poured(int timer) {
        return minutes[layout.pour(timer)];
    }

    /** When the machine of a task is ready for it, other machines apart. */
    int machineReady(int row, int task) {
        return at(row, layout.ready(task));
    }

    /** When the machine of a task is ready for it, and all that excludes it over. */
    int ready(int row, int task) {
        int ready = machineReady(row, task);
        for (int over : layout.overBefore(task)) {
            ready = Math.max(ready, at(row, over));
        }
        return ready;
    }

    /** Whether a row says anything: the beginning always, a timer while it runs. */
    boolean isOpen(int row) {
        return row == 0 || at(row, layout.pour(row - 1)) == 0;
    }

    /** Where a task was placed, and what was walked in all, where that counts. */
    void note(int newest, int walked) {
        minutes[layout.newest()] = newest;
        minutes[layout.walked()] = walked;
    }

    /** A task was placed: what it makes later. */
    void place(int row, int begin, int task, int[] people) {
        if (begin < 0 && row > 0 && begin <= Network.NONE / 2) {
            return;
        }
        int over = begin + network.duration[task];
        int whole = begin + network.whole(task);
        for (int person : people) {
            set(row, layout.free(person), over);
        }
        int next = layout.machine(network.machine[task]) + StateLayout.NEXT_GROUP;
        raise(row, next, over);
        raise(row, next + 1, whole);
        for (int column : layout.overWith(task)) {
            raise(row, column, whole);
        }
        raise(row, layout.end(), whole);
    }

    /** The timer of a pouring that was placed begins to run. */
    void start(int timer, int[] begin, int task, int[] people) {
        forget(timer + 1);
        place(timer + 1, 0, task, people);
        for (int row = 0; row < layout.rows(); row++) {
            set(row, layout.pour(timer), row == timer + 1 ? 0 : begin[row]);
        }
    }

    /** Puts a pouring off until its flush is in time, and all that follows from it; false when that is no help. */
    boolean putOff(int[] begin, int timer) {
        int most = layout.most(timer);
        if (begin[timer + 1] > most) {
            return false;
        }
        for (int row = 0; row < layout.rows(); row++) {
            int later = begin[row] - most;
            if (row != timer + 1 && begin[row] > Network.NONE / 2 && later > at(row, layout.pour(timer))) {
                follow(row, timer + 1, later);
                if (row > 0 && at(row, layout.pour(row - 1)) > 0) {
                    return false;
                }
            }
        }
        forget(timer + 1);
        for (int row = 0; row < layout.rows(); row++) {
            set(row, layout.pour(timer), Network.NONE);
        }
        return true;
    }

    private void follow(int row, int poured, int later) {
        for (int column = 0; column < layout.width(); column++) {
            if (at(poured, column) > Network.NONE / 2) {
                raise(row, column, later + at(poured, column));
            }
        }
    }

    /** When the last task of a group was placed, the next group's turn has come. */
    void closeGroup(int task, BitSet done) {
        if (!layout.precedence().isGroupDone(task, done)) {
            return;
        }
        int present = layout.machine(network.machine[task]);
        int next = present + StateLayout.NEXT_GROUP;
        for (int row = 0; row < layout.rows(); row++) {
            for (int i = 0; i < StateLayout.NEXT_GROUP; i++) {
                raise(row, present + i, at(row, next + i));
                set(row, next + i, row == 0 ? 0 : Network.NONE);
            }
        }
    }

    /** Nothing can begin at a machine sooner than somebody is there. */
    void settle(int row, int machine, int soonest) {
        raise(row, layout.machine(machine), soonest);
        raise(row, layout.machine(machine) + 1, soonest);
    }

    /** Nothing at all can begin at a machine whose tasks are done. */
    void finish(int row, int machine) {
        int from = row * layout.width() + layout.machine(machine);
        Arrays.fill(minutes, from, from + StateLayout.PER_MACHINE, Network.NONE);
    }

    /** Whether two people are free at the same time, counted from whatever. */
    boolean areFreeTogether(int one, int other) {
        for (int row = 0; row < layout.rows(); row++) {
            if (free(row, one) != free(row, other)) {
                return false;
            }
        }
        return true;
    }

    /** Whether none is longer than the other's. */
    boolean areNoLonger(LongestPaths other) {
        for (int i = 0; i < minutes.length; i++) {
            if (minutes[i] > other.minutes[i]) {
                return false;
            }
        }
        return true;
    }
}
