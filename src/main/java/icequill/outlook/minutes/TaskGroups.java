package icequill.outlook.minutes;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Tasks that visits tell apart: those that always had the same part in each other are one group. */
record TaskGroups(List<List<String>> groups) {

    private static final double SAME = 1e-9;

    /** By the first task of each. */
    static TaskGroups of(List<VisitTime> visits) {
        TreeSet<String> tasks = new TreeSet<>();
        visits.forEach(visit -> visit.attended().forEach((task, minutes) -> {
            if (minutes > 0) {
                tasks.add(task);
            }
        }));
        List<List<String>> groups = new ArrayList<>();
        for (String task : tasks) {
            groups.stream().filter(group -> isAlways(group.getFirst(), task, visits)).findFirst()
                    .ifPresentOrElse(group -> group.add(task), () -> groups.add(new ArrayList<>(List.of(task))));
        }
        return new TaskGroups(groups);
    }

    /** All of them as one. */
    TaskGroups together() {
        return new TaskGroups(List.of(groups.stream().flatMap(List::stream).sorted().toList()));
    }

    private static boolean isAlways(String one, String other, List<VisitTime> visits) {
        double ones = total(one, visits);
        double others = total(other, visits);
        return visits.stream().allMatch(
                visit -> Math.abs(visit.share(one) / ones - visit.share(other) / others) < SAME);
    }

    private static double total(String task, List<VisitTime> visits) {
        return visits.stream().mapToDouble(visit -> visit.share(task)).sum();
    }

    /** What part each group has in the work of a visit; together 1. */
    double[] shares(VisitTime visit) {
        return groups.stream().mapToDouble(group -> group.stream().mapToDouble(visit::share).sum()).toArray();
    }
}
