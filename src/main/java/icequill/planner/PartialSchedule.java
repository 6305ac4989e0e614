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
    private final LongestPaths paths;
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

    private PartialSchedule(StateLayout layout, LongestPaths paths, BitSet done, int[] place, int walking,
            @Nullable Step last) {
        this.layout = layout;
        this.network = layout.network();
        this.paths = paths;
        this.done = done;
        this.place = place;
        this.walking = walking;
        this.last = last;
    }

    static PartialSchedule empty(StateLayout layout) {
        int[] place = new int[layout.crew()];
        Arrays.fill(place, -1);
        return new PartialSchedule(layout, LongestPaths.of(layout), new BitSet(), place, 0, null);
    }

    Sequence sequence() {
        Deque<Sequence.Step> steps = new ArrayDeque<>();
        for (Step step = last; step != null; step = step.previous) {
            steps.addFirst(new Sequence.Step(step.task, Arrays.stream(step.people).boxed().toList(), -1));
        }
        return new Sequence(end(), walking, List.copyOf(steps));
    }

    private int walk(int person, int machine) {
        return network.walks.from(place[person], machine);
    }

    int free(int person) {
        return paths.free(0, person);
    }

    /** When the task placed last begins, before which none that comes later does. */
    int newest() {
        return paths.newest();
    }

    /** When everything placed so far is over, waits included. */
    int end() {
        return paths.end();
    }

    /** When the machine of a task is ready for it. */
    int ready(int task) {
        return paths.ready(0, task);
    }

    private int begin(int row, int task, int[] people) {
        int begin = paths.ready(row, task);
        for (int person : people) {
            begin = Math.max(begin, paths.free(row, person) + walk(person, network.machine[task]));
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
        LongestPaths next = paths.copy();
        int[] begin = new int[rows];
        for (int row = 0; row < rows; row++) {
            begin[row] = paths.isOpen(row) ? begin(row, task, people) : Network.NONE;
            next.place(row, begin[row], task, people);
        }
        if (begin[0] < newest() && objective != Objective.ONE_BY_ONE) {
            return null;
        }
        int timer = layout.timerOf(task);
        if (timer >= 0) {
            next.start(timer, begin, task, people);
        }
        int flushed = layout.flushedBy(task);
        if (flushed >= 0 && !next.putOff(begin, flushed)) {
            return null;
        }
        BitSet placed = (BitSet) done.clone();
        placed.set(task);
        next.closeGroup(task, placed);
        int walked = walking;
        int[] places = place.clone();
        for (int person : people) {
            walked += walk(person, network.machine[task]);
            places[person] = network.machine[task];
        }
        next.note(objective == Objective.ONE_BY_ONE ? 0 : begin[0], objective == Objective.WALKING ? walked : 0);
        PartialSchedule schedule = new PartialSchedule(layout, next, placed, places, walked,
                new Step(task, people, last));
        return schedule.isInTime() && schedule.flushes().arePossible() ? schedule.settled() : null;
    }

    /** Whether everybody who was given something is done with it when he leaves. */
    private boolean isInTime() {
        for (int person = 0; person < place.length; person++) {
            if (place[person] >= 0 && free(person) > layout.until(person)) {
                return false;
            }
        }
        return true;
    }

    /** By how many minutes pourings will have to be put off, by what can be seen so far. */
    int lateness() {
        return flushes().lateness(newest());
    }

    private DueFlushes flushes() {
        return new DueFlushes(layout, paths, place);
    }

    /** A machine that is ready before anybody can be there is as good as one that is ready when the first is there. */
    private PartialSchedule settled() {
        for (int machine = 0; machine < layout.machines(); machine++) {
            boolean over = layout.precedence().isOver(machine, done);
            for (int row = 0; row < layout.rows(); row++) {
                if (over) {
                    paths.finish(row, machine);
                } else {
                    paths.settle(row, machine, soonest(row, machine, row == 0 ? newest() : Network.NONE));
                }
            }
        }
        return this;
    }

    /** When the first can be at a machine, by a row, not before a minute. */
    private int soonest(int row, int machine, int earliest) {
        int soonest = Integer.MAX_VALUE;
        for (int person = 0; person < place.length; person++) {
            soonest = Math.min(soonest, paths.free(row, person) + walk(person, machine));
        }
        return Math.max(soonest, earliest);
    }

    /** Whether two people are in the same situation. */
    boolean isAlike(int one, int other) {
        return place[one] == place[other] && layout.areAlike(one, other) && paths.areFreeTogether(one, other);
    }

    /** Whether nothing that comes later can be sooner after the other; both of the same tasks, with people at the same places. */
    boolean dominates(PartialSchedule other) {
        return paths.areNoLonger(other.paths);
    }
}
