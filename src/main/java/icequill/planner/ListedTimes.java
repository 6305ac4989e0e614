package icequill.planner;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The times that a list of tasks came to, kept as they are: most of them are soon given up for better ones. */
final class ListedTimes {

    private final Network network;
    private final int end;
    private final int walking;
    private final int overstayed;
    private final int[] start;
    private final int[][] people;
    private final boolean timed;

    /**
     * Times of all tasks, by position.
     *
     * @param overstayed minutes of all people together for which somebody stays longer than he may
     * @param people at each task, by number
     * @param timed whether nothing may begin sooner, though those who do it were free
     */
    ListedTimes(Network network, int end, int walking, int overstayed, int[] start, int[][] people, boolean timed) {
        this.network = network;
        this.end = end;
        this.walking = walking;
        this.overstayed = overstayed;
        this.start = start;
        this.people = people;
        this.timed = timed;
    }

    int end() {
        return end;
    }

    int walking() {
        return walking;
    }

    int overstayed() {
        return overstayed;
    }

    /** Whether others are better, or as good: people stay less long, it ends sooner, or they walk less, in this order. */
    boolean areNoBetterThan(int otherOverstayed, int otherEnd, int otherWalking) {
        int order = Integer.compare(overstayed, otherOverstayed);
        if (order == 0) {
            order = Integer.compare(end, otherEnd);
        }
        return order == 0 ? walking >= otherWalking : order > 0;
    }

    /** Tasks by the time at which they begin; of what begins together and takes no time, that comes first. */
    Sequence sequence() {
        List<Sequence.Step> steps = IntStream.range(0, network.size()).boxed()
                .sorted(Comparator.<Integer>comparingInt(task -> start[task])
                        .thenComparingInt(task -> network.duration[task]).thenComparingInt(network::whole))
                .map(task -> new Sequence.Step(task, Arrays.stream(people[task]).boxed().toList(),
                        timed ? start[task] : -1))
                .toList();
        return new Sequence(end, walking, steps);
    }
}
