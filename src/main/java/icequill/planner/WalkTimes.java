package icequill.planner;

import icequill.problem.Check;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Minutes of walking from machine to machine, the same both ways, over the shortest way.
 */
public final class WalkTimes {

    /** The most minutes of one walk. */
    public static final int LONGEST = 60;

    private final List<String> machines;
    private final int[][] minutes;

    /**
     * A walk between two machines.
     *
     * @param minutes from 0 to {@link WalkTimes#LONGEST}; 0 says that both stand in the same room
     */
    public record Walk(String one, String other, int minutes) {
        public Walk {
            Check.inRange(minutes, 0, LONGEST, "minutes");
        }
    }

    private WalkTimes(List<String> machines, int[][] minutes) {
        this.machines = machines;
        this.minutes = minutes;
    }

    /**
     * Walks between machines.
     *
     * @param usual minutes between two for which nothing else is said, from 0 to {@link #LONGEST}
     * @param walks those that are said; a walk to a machine that is not listed is of no account
     */
    public static WalkTimes of(List<String> machines, int usual, Collection<Walk> walks) {
        Check.inRange(usual, 0, LONGEST, "usual");
        List<String> known = List.copyOf(machines);
        int[][] minutes = new int[known.size()][known.size()];
        for (int i = 0; i < minutes.length; i++) {
            Arrays.fill(minutes[i], usual);
            minutes[i][i] = 0;
        }
        for (Walk walk : walks) {
            int one = known.indexOf(walk.one());
            int other = known.indexOf(walk.other());
            if (one >= 0 && other >= 0 && one != other) {
                minutes[one][other] = walk.minutes();
                minutes[other][one] = walk.minutes();
            }
        }
        shorten(minutes);
        return new WalkTimes(known, minutes);
    }

    /** Nobody walks from one to another when it is shorter by way of a third. */
    private static void shorten(int[][] minutes) {
        for (int by = 0; by < minutes.length; by++) {
            for (int from = 0; from < minutes.length; from++) {
                for (int to = 0; to < minutes.length; to++) {
                    minutes[from][to] = Math.min(minutes[from][to], minutes[from][by] + minutes[by][to]);
                }
            }
        }
    }

    /** The same with the machines by id. */
    WalkTimes sorted() {
        List<String> sorted = machines.stream().sorted().toList();
        int[] from = sorted.stream().mapToInt(machines::indexOf).toArray();
        int[][] times = new int[from.length][from.length];
        for (int i = 0; i < from.length; i++) {
            for (int j = 0; j < from.length; j++) {
                times[i][j] = minutes[from[i]][from[j]];
            }
        }
        return new WalkTimes(sorted, times);
    }

    /** In the order in which they were given. */
    public List<String> machines() {
        return machines;
    }

    /** Minutes from one machine to another, both by position. */
    int between(int from, int to) {
        return minutes[from][to];
    }

    /** The same; nobody walks to his first machine, which is from -1. */
    int from(int from, int to) {
        return from < 0 ? 0 : minutes[from][to];
    }

    /** Minutes to a machine from the one farthest from it, by id; 0 when it stands alone. */
    public int farthest(String machine) {
        return Arrays.stream(minutes[machines.indexOf(machine)]).max().orElse(0);
    }

    /** All machines by id, each followed by the nearest that is left, so that a floor is done with before the next. */
    public List<String> tour() {
        List<String> left = new ArrayList<>(machines);
        Collections.sort(left);
        List<String> tour = new ArrayList<>();
        while (!left.isEmpty()) {
            String next = tour.isEmpty()
                    ? left.getFirst()
                    : left.stream().min(Comparator.comparingInt(other -> walk(tour.getLast(), other))).orElseThrow();
            left.remove(next);
            tour.add(next);
        }
        return tour;
    }

    /** Minutes from one machine to another, both by id. */
    public int walk(String from, String to) {
        return minutes[machines.indexOf(from)][machines.indexOf(to)];
    }

    /** The longest walk between two of them. */
    int longest() {
        return Arrays.stream(minutes).flatMapToInt(Arrays::stream).max().orElse(0);
    }

    /** The shortest walk to a machine from any other; 0 when it stands alone. */
    int arrival(int machine) {
        int least = Integer.MAX_VALUE;
        for (int from = 0; from < minutes.length; from++) {
            if (from != machine) {
                least = Math.min(least, minutes[from][machine]);
            }
        }
        return least == Integer.MAX_VALUE ? 0 : least;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WalkTimes same && machines.equals(same.machines)
                && Arrays.deepEquals(minutes, same.minutes);
    }

    @Override
    public int hashCode() {
        return 31 * machines.hashCode() + Arrays.deepHashCode(minutes);
    }
}
