package icequill.planner;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A timetable in the making: some tasks placed, each person's in a sequence. Of all that was placed only that is kept which what
 * comes later can feel: the longest ways from the beginning of the visit, and from each pouring whose timer runs, to when people
 * are free, machines ready and the whole over. With them a pouring can still be put off for a flush, and two schedules of the same
 * tasks can be compared: one dominates another when none of its ways is longer.
 */
final class PartialSchedule {

    private final StateLayout layout;
    private final Network network;
    /** One row for the beginning, then one for each timer; a column for each thing that {@link StateLayout} names. */
    private final int[] way;
    final BitSet done;
    /** At which machine each person is; -1 before his first task. */
    final int[] place;
    final int walking;
    private final @Nullable Step last;

    /** A task as it was placed, and who does it. */
    private static final class Step {
        private final int task;
        private final int[] people;
        private final @Nullable Step previous;

        private Step(int task, int[] people, @Nullable Step previous) {
            this.task = task;
            this.people = people;
            this.previous = previous;
        }
    }

    private PartialSchedule(StateLayout layout, int[] way, BitSet done, int[] place, int walking, @Nullable Step last) {
        this.layout = layout;
        this.network = layout.network();
        this.way = way;
        this.done = done;
        this.place = place;
        this.walking = walking;
        this.last = last;
    }

    static PartialSchedule empty(StateLayout layout) {
        int[] way = new int[layout.rows() * layout.width()];
        Arrays.fill(way, Network.NONE);
        Arrays.fill(way, 0, layout.width(), 0);
        for (int timer = 0; timer < layout.timers(); timer++) {
            way[layout.pour(timer)] = Network.NONE;
        }
        int[] place = new int[layout.crew()];
        Arrays.fill(place, -1);
        return new PartialSchedule(layout, way, new BitSet(), place, 0, null);
    }

    Sequence sequence() {
        Deque<Sequence.Step> steps = new ArrayDeque<>();
        for (Step step = last; step != null; step = step.previous) {
            steps.addFirst(new Sequence.Step(step.task, Arrays.stream(step.people).boxed().toList()));
        }
        return new Sequence(end(), walking, List.copyOf(steps));
    }

    private int walk(int person, int machine) {
        return network.walks.from(place[person], machine);
    }

    int free(int person) {
        return way[layout.free(person)];
    }

    /** When the task placed last begins, before which none that comes later does. */
    int newest() {
        return way[layout.newest()];
    }

    /** When everything placed so far is over, waits included. */
    int end() {
        return way[layout.end()];
    }

    /** When the machine of a task is ready for it. */
    int ready(int task) {
        return ready(0, task);
    }

    private int ready(int row, int task) {
        int from = row * layout.width();
        int ready = way[from + layout.ready(task)];
        for (int over : layout.overBefore(task)) {
            ready = Math.max(ready, way[from + over]);
        }
        return ready;
    }

    private int begin(int row, int task, int[] people) {
        int begin = ready(row, task);
        for (int person : people) {
            begin = Math.max(begin,
                    way[row * layout.width() + layout.free(person)] + walk(person, network.machine[task]));
        }
        return begin;
    }

    /**
     * With one more task at the end of some people's sequences; null when a timer would run out, whatever is put off for it.
     * Where the end is aimed at, also when it would begin before the task placed last: the same comes about by placing them
     * the other way round.
     */
    @Nullable
    PartialSchedule with(int task, int[] people, Objective objective) {
        int rows = layout.rows();
        int width = layout.width();
        int[] next = way.clone();
        int[] begin = new int[rows];
        for (int row = 0; row < rows; row++) {
            begin[row] = layout.isOpen(way, row) ? begin(row, task, people) : Network.NONE;
            place(next, row * width, begin[row], task, people);
        }
        if (begin[0] < newest() && objective != Objective.ONE_BY_ONE) {
            return null;
        }
        next[layout.newest()] = objective == Objective.ONE_BY_ONE ? 0 : begin[0];
        int timer = layout.timerOf(task);
        if (timer >= 0) {
            start(next, timer, task, people);
            for (int row = 0; row < rows; row++) {
                next[row * width + layout.pour(timer)] = row == timer + 1 ? 0 : begin[row];
            }
        }
        int flushed = layout.flushedBy(task);
        if (flushed >= 0 && !putOff(next, begin, flushed)) {
            return null;
        }
        BitSet placed = (BitSet) done.clone();
        placed.set(task);
        layout.closeGroup(next, task, placed);
        int walked = walking;
        int[] places = place.clone();
        for (int person : people) {
            walked += walk(person, network.machine[task]);
            places[person] = network.machine[task];
        }
        next[layout.walked()] = objective == Objective.WALKING ? walked : 0;
        PartialSchedule schedule = new PartialSchedule(layout, next, placed, places, walked,
                new Step(task, people, last));
        return schedule.flushes().arePossible() ? schedule.settled() : null;
    }

    private void place(int[] next, int from, int begin, int task, int[] people) {
        if (begin < 0 && from > 0 && begin <= Network.NONE / 2) {
            return;
        }
        int over = begin + network.duration[task];
        for (int person : people) {
            next[from + layout.free(person)] = over;
        }
        layout.raise(next, from, task, over, begin + network.whole(task));
    }

    private void start(int[] next, int timer, int task, int[] people) {
        int from = (timer + 1) * layout.width();
        Arrays.fill(next, from, from + layout.width(), Network.NONE);
        place(next, from, 0, task, people);
    }

    /** Puts a pouring off until its flush is in time, and all that follows from it; false when that is no help. */
    private boolean putOff(int[] next, int[] begin, int timer) {
        int width = layout.width();
        int most = layout.most(timer);
        int poured = (timer + 1) * width;
        if (begin[timer + 1] > most) {
            return false;
        }
        for (int row = 0; row < layout.rows(); row++) {
            int later = begin[row] - most;
            if (row == timer + 1 || begin[row] <= Network.NONE / 2
                    || later <= next[row * width + layout.pour(timer)]) {
                continue;
            }
            for (int column = 0; column < width; column++) {
                if (next[poured + column] > Network.NONE / 2) {
                    next[row * width + column] = Math.max(next[row * width + column], later + next[poured + column]);
                }
            }
            if (row > 0 && next[row * width + layout.pour(row - 1)] > 0) {
                return false;
            }
        }
        Arrays.fill(next, poured, poured + width, Network.NONE);
        for (int row = 0; row < layout.rows(); row++) {
            next[row * width + layout.pour(timer)] = Network.NONE;
        }
        return true;
    }

    /** By how many minutes pourings will have to be put off, by what can be seen so far. */
    int lateness() {
        return flushes().lateness(newest());
    }

    private DueFlushes flushes() {
        return new DueFlushes(layout, way, place);
    }

    /** A machine that is ready before anybody can be there is as good as one that is ready when the first is there. */
    private PartialSchedule settled() {
        for (int machine = 0; machine < layout.machines(); machine++) {
            boolean over = layout.precedence().isOver(machine, done);
            for (int row = 0; row < layout.rows(); row++) {
                int from = row * layout.width();
                if (over) {
                    layout.finish(way, from, machine);
                } else {
                    layout.settle(way, from, machine, soonest(from, machine, row == 0 ? newest() : Network.NONE));
                }
            }
        }
        return this;
    }

    /** When the first can be at a machine, by a row, not before a minute. */
    private int soonest(int from, int machine, int earliest) {
        int soonest = Integer.MAX_VALUE;
        for (int person = 0; person < place.length; person++) {
            soonest = Math.min(soonest, way[from + layout.free(person)] + walk(person, machine));
        }
        return Math.max(soonest, earliest);
    }

    /** Whether two people are in the same situation. */
    boolean isAlike(int one, int other) {
        if (place[one] != place[other] || !layout.areAlike(one, other)) {
            return false;
        }
        for (int row = 0; row < layout.rows(); row++) {
            int from = row * layout.width();
            if (way[from + layout.free(one)] != way[from + layout.free(other)]) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing that comes later can be sooner after the other; both of the same tasks, with people at the same places. */
    boolean dominates(PartialSchedule other) {
        for (int i = 0; i < way.length; i++) {
            if (way[i] > other.way[i]) {
                return false;
            }
        }
        return true;
    }
}
