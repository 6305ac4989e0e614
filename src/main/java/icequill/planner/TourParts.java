package icequill.planner;

import java.util.ArrayList;
import java.util.List;

/** Parts the machines of a visit, for as many days: each has machines that stand near each other, and about as much work as any other. */
public record TourParts(VisitWork work) {

    /** A part may have so many percent of its share of the work more or less, so that it ends where the longest walk comes. */
    private static final int LEEWAY = 10;
    private static final int PERCENT = 100;

    /** Parts of the tour of all machines with work, each with one or more. */
    public List<List<String>> of(int count) {
        List<String> left = new ArrayList<>(work.walks().tour().stream().filter(each -> minutes(each) > 0).toList());
        List<List<String>> parts = new ArrayList<>();
        for (int more = count; more > 1 && left.size() > 1; more--) {
            List<String> part = left.subList(0, cut(left, more));
            parts.add(List.copyOf(part));
            part.clear();
        }
        parts.add(List.copyOf(left));
        return parts;
    }

    /** How many of them make up the first of so many parts. */
    private int cut(List<String> tour, int parts) {
        int all = tour.stream().mapToInt(this::minutes).sum();
        int share = all / parts;
        int best = 1;
        int least = Integer.MAX_VALUE;
        int walk = -1;
        int minutes = 0;
        for (int size = 1; size < tour.size(); size++) {
            minutes += minutes(tour.get(size - 1));
            int off = Math.abs(minutes - share);
            int longer = off * PERCENT <= share * LEEWAY ? work.walks().walk(tour.get(size - 1), tour.get(size)) : -1;
            if (longer > walk || (longer == walk && off < least)) {
                best = size;
                least = off;
                walk = longer;
            }
        }
        return best;
    }

    private int minutes(String machine) {
        return work.tasksAt(machine).stream().mapToInt(task -> task.attended() * task.people() + task.unattended())
                .sum();
    }
}
