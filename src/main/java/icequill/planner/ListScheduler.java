package icequill.planner;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * List scheduling, one task after another: makes a timetable of a list of tasks. Each in turn begins as soon as it can, in any gap
 * that those before it left. From a pouring to its flush a machine's tasks are given their times together, the pouring put off until
 * the flush is in time.
 */
final class ListScheduler {

    /** A task may begin as late as it can. */
    private static final int ANY_TIME = Roster.NEVER - 1;

    private final Network network;
    private final Crew crew;
    private final boolean strict;
    private final Started started;
    private final Staffing staffing;
    private final Turns turns;
    private final ExclusionState exclusions;
    private final int[] start;
    private final int[][] people;
    private final int[] sequence;
    private int count;
    private int end;
    private int walking;
    private int overstayed;

    /**
     * @param strict whether breaks are kept, nobody is alone on site who must not be, and somebody stays longer than he may where nothing
     *        else helps; otherwise a list that would ask for that cannot be followed
     * @param started what is done already
     */
    ListScheduler(Network network, Crew crew, boolean strict, Started started) {
        this.network = network;
        this.crew = crew;
        this.strict = strict;
        this.started = started;
        int tasks = network.size();
        staffing = new Staffing(network, crew, strict);
        start = new int[tasks];
        people = new int[tasks][0];
        sequence = new int[tasks];
        turns = new Turns(network);
        exclusions = new ExclusionState(network);
    }

    int end() {
        return end;
    }

    int walking() {
        return walking;
    }

    /** Minutes of all people together for which somebody stays longer than he may. */
    int overstayed() {
        return overstayed;
    }

    /** The tasks in the order in which they were given their times. */
    int[] sequence() {
        return sequence.clone();
    }

    /** The times as they were given last. */
    ListedTimes times() {
        return new ListedTimes(network, end, walking, overstayed, start.clone(), people.clone(), strict);
    }

    /**
     * Gives every task its time: always the one of least rank whose turn has come.
     *
     * @return whether it could be done in this order
     */
    boolean put(int[] rank) {
        staffing.clear();
        exclusions.clear();
        Arrays.fill(start, -1);
        count = 0;
        end = 0;
        if (!begin()) {
            return false;
        }
        while (count < rank.length) {
            int next = turns.next(rank, start, exclusions);
            if (next < 0 || !block(next)) {
                return false;
            }
        }
        for (int task = 0; task < rank.length; task++) {
            end = Math.max(end, start[task] + network.whole(task));
        }
        walking = staffing.walking();
        overstayed = strict && !crew.staysToTheEnd()
                ? new Departures(network, crew, start, people).overstayed()
                : 0;
        return true;
    }

    /** What is done already; then what waits for a flush, the most urgent first, with breaks after it. */
    private boolean begin() {
        for (int task : started.done()) {
            start[task] = started.start(task);
            people[task] = started.people(task);
            staffing.give(task, people[task], start[task]);
            sequence[count++] = task;
            exclusions.place(task, start[task] + network.whole(task));
        }
        exclusions.forgive();
        staffing.hurry(true);
        boolean flushed = started.running().stream().allMatch(pour -> started.toFlush(pour)
                .allMatch(task -> exclusions.isFree(task) && place(task, 0, started.latest(pour, task))));
        staffing.hurry(false);
        return flushed;
    }

    private boolean block(int first) {
        int flush = turns.lastOfBlock(first);
        if (flush == first) {
            return place(first, 0, ANY_TIME);
        }
        int[] block = IntStream.rangeClosed(first, flush).filter(task -> start[task] < 0).toArray();
        int most = network.tasks.get(first).timer().orElseThrow().most();
        int soonest = 0;
        int free = free();
        while (soonest <= free) {
            for (int task : block) {
                if (!exclusions.isFree(task) || !place(task, task == first ? soonest : 0, ANY_TIME)) {
                    return false;
                }
            }
            int late = start[flush] - start[first] - most;
            if (late <= 0) {
                return true;
            }
            soonest = start[first] + late;
            for (int i = block.length - 1; i >= 0; i--) {
                takeBack(block[i]);
            }
        }
        return false;
    }

    /** From when on everybody has come, is free and rested, wherever he is needed: later nothing is in time that is not so then. */
    private int free() {
        int free = crew.members().stream().mapToInt(Crew.Member::from).max().orElse(0);
        for (int task = 0; task < start.length; task++) {
            free = start[task] < 0 ? free : Math.max(free, start[task] + network.whole(task));
        }
        return free + WalkTimes.LONGEST + crew.rest().map(Crew.Rest::minutes).orElse(0);
    }

    /** Once it is later than a minute, somebody stays longer for it rather than that it is later still. */
    private boolean place(int task, int earliest, int latest) {
        int begin = Math.max(earliest, started.earliest(task));
        int machine = network.machine[task];
        for (int other = turns.first(machine); other < turns.first(machine + 1); other++) {
            if (start[other] >= 0 && network.lag[other][task] >= 0) {
                begin = Math.max(begin, start[other] + network.lag[other][task]);
            }
        }
        if (!give(task, exclusions.earliest(task, begin), latest)) {
            return false;
        }
        sequence[count++] = task;
        exclusions.place(task, start[task] + network.whole(task));
        return true;
    }

    private boolean give(int task, int earliest, int latest) {
        int begin = staffing.begin(task, earliest);
        if (begin > latest) {
            int sooner = staffing.beginStaying(task, earliest, latest != ANY_TIME);
            begin = sooner < begin ? sooner : staffing.begin(task, earliest);
        }
        if (begin == Roster.NEVER) {
            return false;
        }
        start[task] = begin;
        people[task] = staffing.chosen(network.people[task]);
        staffing.give(task, people[task], begin);
        return true;
    }

    private void takeBack(int task) {
        staffing.takeBack(people[task], start[task]);
        start[task] = -1;
        count--;
        exclusions.takeBack(task);
    }
}
