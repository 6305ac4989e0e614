package icequill.planner;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Local search for a list of tasks that gives a short timetable: moves a task, or what is left to be done at a machine, to another place
 * in the list, and goes on from what is no longer; seldom, and ever more seldom, also from what is a little longer. All is counted in
 * whole numbers, so that it finds the same on any computer.
 */
final class LocalSearch {

    private static final long SEED = 20_260_714;
    /** Lists that begin each machine of a tour later than the one before it, by so many eighths of a person's share of a machine's work. */
    private static final int STAGGERS = 13;
    private static final int EIGHTHS = 8;
    /** Each minute more is let pass one time in so many at the beginning, and never at the end. */
    private static final int SELDOM = 5;
    /** Of so many moves one is that of a whole machine. */
    private static final int MACHINES = 8;
    /** Of few tasks there are few lists; by then each was met many times over. */
    private static final int TIMES_EACH = 20;

    private final Network network;
    private final Crew crew;
    private final ListScheduler scheduler;
    private final Random random = new Random(SEED);
    private final int[] rank;
    private @Nullable ListedTimes best;
    private int[] list = new int[0];
    private int nodes;

    LocalSearch(Network network, Crew crew, ListScheduler scheduler) {
        this.network = network;
        this.crew = crew;
        this.scheduler = scheduler;
        rank = new int[network.size()];
    }

    /**
     * The best that was found; null where no list could be followed. Asked again, it goes on.
     *
     * @param bound at which nothing shorter need be looked for
     * @param most placings that are tried in all
     */
    @Nullable
    Sequence shortest(int bound, int most) {
        if (nodes == 0) {
            stagger();
        }
        int[] current = list;
        int end = best == null ? 0 : best.end() + best.overstayed();
        int enough = Math.min(most, worthwhile());
        while (best != null && (best.overstayed() > 0 || best.end() > bound) && nodes < enough) {
            int[] other = random.nextInt(MACHINES) == 0 ? withMachineMoved(current) : withTaskMoved(current);
            if (schedule(other)) {
                int longer = scheduler.end() + scheduler.overstayed();
                if (isAccepted(longer - end, most)) {
                    end = longer;
                    current = scheduler.sequence();
                }
                keep();
            }
        }
        return best();
    }

    /** How many placings can tell anything new: of four tasks there are 24 lists. */
    private int worthwhile() {
        long placings = (long) TIMES_EACH * network.size();
        for (int task = 2; task <= network.size() && placings < Integer.MAX_VALUE; task++) {
            placings *= task;
        }
        return (int) Math.min(Integer.MAX_VALUE, placings);
    }

    private @Nullable Sequence best() {
        return best == null ? null : best.sequence();
    }

    /** Takes a sequence that came about otherwise for a list, where that gives as short a timetable. */
    void startFrom(Sequence sequence) {
        if (schedule(sequence.steps().stream().mapToInt(Sequence.Step::task).toArray())) {
            keep();
        }
    }

    private boolean isAccepted(int longer, int most) {
        for (int minute = 0; minute < longer; minute++) {
            if (random.nextInt(most) >= (most - nodes) / SELDOM) {
                return false;
            }
        }
        return true;
    }

    /** Then, at the same length, for less walking. */
    @Nullable
    Sequence leastWalking(int most) {
        int until = nodes + Math.min(most, worthwhile());
        while (best != null && best.walking() > 0 && nodes < until) {
            if (schedule(withTaskMoved(list))) {
                keep();
            }
        }
        return best();
    }

    private void stagger() {
        List<String> tour = network.walks.tour();
        int[] turn = network.walks.machines().stream().mapToInt(tour::indexOf).toArray();
        int share = new LowerBounds(network, crew).attended() / crew.size() / network.walks.machines().size();
        for (int eighths = 0; eighths < STAGGERS; eighths++) {
            int later = share * eighths;
            int[] order = IntStream.range(0, network.size()).boxed()
                    .sorted(Comparator
                            .comparingInt(task -> EIGHTHS * network.head[task] + later * turn[network.machine[task]]))
                    .mapToInt(Integer::intValue).toArray();
            if (schedule(order)) {
                keep();
            }
        }
    }

    private boolean schedule(int[] order) {
        nodes += order.length;
        for (int i = 0; i < order.length; i++) {
            rank[order[i]] = i;
        }
        return scheduler.put(rank);
    }

    /** Of what is equally good the latest, so that it does not stay where it is. */
    private void keep() {
        if (best == null
                || best.areNoBetterThan(scheduler.overstayed(), scheduler.end(), scheduler.walking())) {
            best = scheduler.times();
            list = scheduler.sequence();
        }
    }

    private int[] withTaskMoved(int[] order) {
        int from = random.nextInt(order.length);
        int to = Math.clamp(from + distance(order.length), 0, order.length - 1);
        int[] moved = order.clone();
        if (to > from) {
            System.arraycopy(order, from + 1, moved, from, to - from);
        } else {
            System.arraycopy(order, to, moved, to + 1, from - to);
        }
        moved[to] = order[from];
        return moved;
    }

    /** All that comes at a machine from some task on is done sooner or later by so many places. */
    private int[] withMachineMoved(int[] order) {
        int from = random.nextInt(order.length);
        int where = network.machine[order[from]];
        int distance = distance(order.length);
        int[] place = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = 2 * i + (i >= from && network.machine[order[i]] == where ? 2 * distance + 1 : 0);
        }
        return Arrays.stream(order).boxed().sorted(Comparator.comparingInt(task -> place[task]))
                .mapToInt(Integer::intValue).toArray();
    }

    /** Places forward or back: as often one as two or three, as four to seven, and so on. */
    private int distance(int most) {
        int doublings = Integer.SIZE - Integer.numberOfLeadingZeros(most);
        int distance = 1 << random.nextInt(doublings);
        distance += random.nextInt(distance);
        return random.nextBoolean() ? distance : -distance;
    }
}
