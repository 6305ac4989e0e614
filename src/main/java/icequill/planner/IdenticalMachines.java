package icequill.planner;

import java.util.Arrays;

/** Machines that are alike in all that a timetable can feel. */
final class IdenticalMachines {

    private IdenticalMachines() {
    }

    /** For each machine the one before it that is like it; -1 if there is none. */
    static int[] of(Network network) {
        int[] identical = new int[network.walks.machines().size()];
        Arrays.fill(identical, -1);
        for (int machine = 0; machine < identical.length; machine++) {
            for (int earlier = machine - 1; earlier >= 0 && identical[machine] < 0; earlier--) {
                identical[machine] = alike(network, earlier, machine) ? earlier : -1;
            }
        }
        return identical;
    }

    private static boolean alike(Network network, int one, int other) {
        for (int third = 0; third < network.walks.machines().size(); third++) {
            if (third != one && third != other
                    && network.walks.between(one, third) != network.walks.between(other, third)) {
                return false;
            }
        }
        int[] first = network.at(one).toArray();
        int[] second = network.at(other).toArray();
        if (first.length != second.length) {
            return false;
        }
        for (int i = 0; i < first.length; i++) {
            if (isExcluded(network, first[i]) || isExcluded(network, second[i])
                    || !network.tasks.get(first[i]).isLike(network.tasks.get(second[i]))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isExcluded(Network network, int task) {
        return network.exclusions.stream()
                .anyMatch(exclusion -> exclusion.one().contains(task) || exclusion.other().contains(task));
    }
}
