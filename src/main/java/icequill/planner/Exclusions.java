package icequill.planner;

import icequill.work.DustLevel;
import icequill.work.MachineState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds which tasks of a visit exclude each other: pairs that are never both off, states that clash, dust in a room. */
final class Exclusions {

    private final List<MachineTask> tasks;
    private final int[] machine;
    private final WalkTimes walks;

    /** @param machine of each task, by position */
    Exclusions(List<MachineTask> tasks, int[] machine, WalkTimes walks) {
        this.tasks = tasks;
        this.machine = machine;
        this.walks = walks;
    }

    List<Exclusion> of(List<VisitWork.Pair> neverBothOff) {
        List<Exclusion> found = new ArrayList<>();
        neverBothOff.forEach(pair -> neverBothOff(pair, found));
        for (int i = 0; i < machine.length; i++) {
            for (int j = i + 1; j < machine.length && machine[j] == machine[i]; j++) {
                if (tasks.get(i).clashes(tasks.get(j)) && tasks.get(i).order() == tasks.get(j).order()) {
                    add(found, new int[]{i}, new int[]{j}, true);
                }
            }
            if (tasks.get(i).dust() == DustLevel.RAISES) {
                dust(i, found);
            }
        }
        return List.copyOf(found);
    }

    private void neverBothOff(VisitWork.Pair pair, List<Exclusion> found) {
        int[] one = off(walks.machines().indexOf(pair.one()));
        int[] other = off(walks.machines().indexOf(pair.other()));
        if (restarts(one)) {
            add(found, one, other, restarts(other));
        } else {
            add(found, other, one, false);
        }
    }

    /** The tasks during which a machine makes no ice: from the first that stops it to the one that starts it again. */
    private int[] off(int where) {
        int[] stopped = at(where).filter(task -> tasks.get(task).state().stopsIce()).toArray();
        if (stopped.length == 0) {
            return stopped;
        }
        int last = stopped[stopped.length - 1];
        int restart = at(where).filter(task -> task > last && tasks.get(task).state() == MachineState.MAKING_ICE)
                .findFirst().orElse(last);
        return at(where).filter(task -> task >= stopped[0] && task <= restart).toArray();
    }

    private IntStream at(int where) {
        return IntStream.range(0, machine.length).filter(task -> machine[task] == where);
    }

    /** Whether a machine that goes off is started again; one that nobody starts goes off after the other is on again. */
    private boolean restarts(int[] off) {
        return off.length == 0 || tasks.get(off[off.length - 1]).state() == MachineState.MAKING_ICE;
    }

    private void dust(int raises, List<Exclusion> found) {
        for (int other = 0; other < walks.machines().size(); other++) {
            if (other != machine[raises] && walks.between(machine[raises], other) == 0) {
                add(found, new int[]{raises},
                        at(other).filter(task -> tasks.get(task).dust() == DustLevel.SPOILED).toArray(), true);
            }
        }
    }

    private static void add(List<Exclusion> found, int[] one, int[] other, boolean free) {
        if (one.length > 0 && other.length > 0) {
            found.add(new Exclusion(setOf(one), setOf(other), free));
        }
    }

    private static Set<Integer> setOf(int[] tasks) {
        return Arrays.stream(tasks).boxed().collect(Collectors.toUnmodifiableSet());
    }
}
