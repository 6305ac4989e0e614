package icequill.planner;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Which tasks are eligible: all that must precede them at their machine is placed. Tasks of equal order at a machine are a group. */
final class Precedence {

    private final Network network;
    private final int[] groupStart;
    private final int[] groupEnd;
    private final List<Integer> oneByOne;
    /** The first task of each machine, and after them how many there are. */
    private final int[] first;

    Precedence(Network network) {
        this.network = network;
        int size = network.size();
        groupStart = new int[size];
        groupEnd = new int[size];
        for (int task = 0; task < size; task++) {
            groupStart[task] = task > 0 && sameGroup(task - 1, task) ? groupStart[task - 1] : task;
        }
        for (int task = size - 1; task >= 0; task--) {
            groupEnd[task] = task + 1 < size && sameGroup(task, task + 1) ? groupEnd[task + 1] : task + 1;
        }
        first = network.firstOfEach();
        oneByOne = IntStream.range(0, network.walks.machines().size()).boxed()
                .sorted(Comparator.comparing(this::isLast)).toList();
    }

    private boolean sameGroup(int one, int other) {
        return network.machine[one] == network.machine[other]
                && network.tasks.get(one).order() == network.tasks.get(other).order();
    }

    /** Whether all of a task's group is done. */
    boolean isGroupDone(int task, BitSet done) {
        return done.nextClearBit(groupStart[task]) >= groupEnd[task];
    }

    /** The eligible tasks: what is not done of each machine's first group that is not, in their order. */
    int[] eligible(BitSet done) {
        int[] eligible = new int[groupEnd.length];
        int count = 0;
        for (int machine = 0; machine + 1 < first.length; machine++) {
            int task = done.nextClearBit(first[machine]);
            int end = task < first[machine + 1] ? groupEnd[task] : 0;
            for (; task < end; task = done.nextClearBit(task + 1)) {
                eligible[count++] = task;
            }
        }
        return Arrays.copyOf(eligible, count);
    }

    /** Whether nothing is done at a machine yet. */
    boolean isUntouched(int machine, BitSet done) {
        int next = done.nextSetBit(first[machine]);
        return next < 0 || next >= first[machine + 1];
    }

    /** Whether all is done at a machine. */
    boolean isOver(int machine, BitSet done) {
        return done.nextClearBit(first[machine]) >= first[machine + 1];
    }

    /** The machines in the order in which they can be done one by one: those that must go off last come last. */
    List<Integer> oneByOne() {
        return oneByOne;
    }

    private boolean isLast(int machine) {
        return network.exclusions.stream().anyMatch(exclusion -> !exclusion.free()
                && exclusion.other().stream().anyMatch(task -> network.machine[task] == machine));
    }

    /** Whether no set of tasks is open that excludes a task which is eligible. */
    boolean isReady(int task, BitSet done) {
        for (Exclusion exclusion : network.exclusions) {
            if ((exclusion.one().contains(task) && exclusion.free() && isOpen(exclusion.other(), done))
                    || (exclusion.other().contains(task) && isBlocked(exclusion, done))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isBlocked(Exclusion exclusion, BitSet done) {
        return exclusion.free()
                ? isOpen(exclusion.one(), done)
                : !exclusion.one().stream().allMatch(done::get);
    }

    private static boolean isOpen(Set<Integer> tasks, BitSet done) {
        long placed = tasks.stream().filter(done::get).count();
        return placed > 0 && placed < tasks.size();
    }
}
