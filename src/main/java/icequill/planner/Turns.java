package icequill.planner;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whose turn it is: which tasks may follow on those that are placed. Tasks of equal order at a machine are a group. */
final class Turns {

    private final Network network;
    private final int[] groupStart;
    private final int[] groupEnd;
    private final List<Integer> inTurn;

    Turns(Network network) {
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
        inTurn = IntStream.range(0, network.walks.machines().size()).boxed()
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

    /** Whether all groups before that of a task are done at its machine. */
    boolean isNext(int task, BitSet done) {
        int before = groupStart[task] - 1;
        return before < 0 || network.machine[before] != network.machine[task]
                || (isGroupDone(before, done) && isNext(before, done));
    }

    /** Whether all is done at a machine. */
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
        if (!isNext(task, done)) {
            return false;
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
