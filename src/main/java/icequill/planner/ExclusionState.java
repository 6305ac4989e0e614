package icequill.planner;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Of each set of tasks that excludes another how many are placed, and when the latest of them is over. */
final class ExclusionState {

    /** The sets that exclude each task; an exclusion's one has an even number, its other the next. */
    private final int[][] excludedBy;
    private final boolean[] mustBeFirst;
    /** Sets that exclude each other no more, since both were open when it was planned. */
    private final boolean[] forgiven;
    private final int[] size;
    private final int[] placed;
    private final int[] over;

    ExclusionState(Network network) {
        int sets = 2 * network.exclusions.size();
        excludedBy = new int[network.size()][];
        mustBeFirst = new boolean[sets];
        forgiven = new boolean[sets];
        size = new int[sets];
        placed = new int[sets];
        over = new int[sets];
        List<List<Integer>> found = new ArrayList<>();
        for (int task = 0; task < network.size(); task++) {
            found.add(new ArrayList<>());
        }
        for (int i = 0; i < network.exclusions.size(); i++) {
            int one = 2 * i;
            Exclusion exclusion = network.exclusions.get(i);
            mustBeFirst[one] = !exclusion.free();
            size[one] = exclusion.one().size();
            size[one + 1] = exclusion.other().size();
            exclusion.one().forEach(task -> found.get(task).add(one + 1));
            exclusion.other().forEach(task -> found.get(task).add(one));
        }
        Arrays.setAll(excludedBy, task -> found.get(task).stream().mapToInt(Integer::intValue).toArray());
    }

    void clear() {
        Arrays.fill(forgiven, false);
        Arrays.fill(placed, 0);
        Arrays.fill(over, 0);
    }

    /** What is broken already is no reason to do nothing any more. */
    void forgive() {
        for (int set = 0; set < placed.length; set++) {
            int other = set ^ 1;
            forgiven[set] = placed[set] < size[set]
                    && (mustBeFirst[set] ? placed[other] > 0 : placed[set] > 0 && isOpen(other));
        }
    }

    private boolean isOpen(int set) {
        return placed[set] > 0 && placed[set] < size[set];
    }

    /** Whether no set of tasks is open that excludes it, nor one to come first that is not done. */
    boolean isFree(int task) {
        for (int set : excludedBy[task]) {
            if (!forgiven[set] && placed[set] < size[set] && (placed[set] > 0 || mustBeFirst[set])) {
                return false;
            }
        }
        return true;
    }

    /** When all that excludes a task is over, but not before a minute. */
    int earliest(int task, int minute) {
        int earliest = minute;
        for (int set : excludedBy[task]) {
            earliest = forgiven[set] ? earliest : Math.max(earliest, over[set]);
        }
        return earliest;
    }

    void place(int task, int end) {
        for (int set : excludedBy[task]) {
            placed[set ^ 1]++;
            over[set ^ 1] = Math.max(over[set ^ 1], end);
        }
    }

    /** A task that is placed anew later than it was. */
    void takeBack(int task) {
        for (int set : excludedBy[task]) {
            placed[set ^ 1]--;
        }
    }
}
