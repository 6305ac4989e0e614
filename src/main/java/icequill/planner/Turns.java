package icequill.planner;

/** Whose turn it is when tasks are given their times: at each machine those of its first group that has not all its times. */
final class Turns {

    private final int[] first;
    /** The end, exclusive, of what is given its times together with a task. */
    private final int[] blockEnd;
    private final int[] groupEnd;

    Turns(Network network) {
        int tasks = network.size();
        first = network.firstOfEach();
        blockEnd = new int[tasks];
        groupEnd = new int[tasks];
        for (int task = tasks - 1; task >= 0; task--) {
            int flush = network.tasks.get(task).timer().isPresent() ? network.flushAfter(task) : -1;
            blockEnd[task] = flush < 0 ? task + 1 : flush + 1;
            boolean last = task + 1 == tasks || network.machine[task + 1] != network.machine[task]
                    || network.tasks.get(task + 1).order() != network.tasks.get(task).order();
            groupEnd[task] = last ? task + 1 : groupEnd[task + 1];
        }
    }

    /** The first task of a machine; of the number of machines how many tasks there are. */
    int first(int machine) {
        return first[machine];
    }

    /** The last task that is given its time together with one: the flush of a pouring, or the task itself. */
    int lastOfBlock(int task) {
        return blockEnd[task] - 1;
    }

    /**
     * Of the tasks whose turn has come the one of least rank; -1 where all that are left are excluded.
     *
     * @param start of each task; below 0 as long as it has none
     */
    int next(int[] rank, int[] start, ExclusionState exclusions) {
        int best = -1;
        for (int machine = 0; machine + 1 < first.length; machine++) {
            int task = first[machine];
            while (task < first[machine + 1] && start[task] >= 0) {
                task++;
            }
            if (task == first[machine + 1]) {
                continue;
            }
            for (int each = task; each < groupEnd[task]; each++) {
                boolean inTurn = each == task || blockEnd[each] == each + 1;
                if (inTurn && start[each] < 0 && (best < 0 || rank[each] < rank[best]) && exclusions.isFree(each)) {
                    best = each;
                }
            }
        }
        return best;
    }
}
