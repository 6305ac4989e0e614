package icequill.planner;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/** Gives the tasks of a finished draft their earliest starts in its sequence. */
record Replay(Network network, Crew crew, Draft draft) {

    /** @param bound no timetable is shorter */
    Timetable timetable(int bound) {
        List<Draft.Step> steps = steps();
        int[] start = starts(steps);
        List<Entry> entries = new ArrayList<>();
        int end = 0;
        for (Draft.Step step : steps) {
            PlanTask task = network.tasks.get(step.task);
            int begin = start[step.task];
            int over = begin + task.attended();
            int whole = over + task.pause();
            int flush = task.timer().isPresent() ? network.flushAfter(step.task) : -1;
            end = Math.max(end, whole);
            entries.add(new Entry(task.machine(), task.name(), task.order(), Kind.TASK, task.state(),
                    Arrays.stream(step.people).boxed().toList(), begin, over));
            if (whole > over) {
                entries.add(
                        new Entry(task.machine(), task.name(), task.order(), Kind.WAIT, task.state(), List.of(), over,
                                flush < 0 ? whole : start[flush]));
            }
        }
        entries.sort(Comparator.comparingInt(Entry::start)
                .thenComparingInt(entry -> network.walks.machines().indexOf(entry.machine()))
                .thenComparingInt(Entry::end).thenComparing(Entry::kind));
        return new Timetable(end, Math.min(bound, end), draft.walking, crew.size(), entries);
    }

    private List<Draft.Step> steps() {
        Deque<Draft.Step> steps = new ArrayDeque<>();
        for (Draft.Step step = draft.last; step != null; step = step.previous) {
            steps.addFirst(step);
        }
        return List.copyOf(steps);
    }

    /** The longest ways from the beginning: starts rise until every lag, walk and timer is kept. */
    private int[] starts(List<Draft.Step> steps) {
        int[] start = new int[network.size()];
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < steps.size(); i++) {
                int begin = begin(steps, i, start);
                changed |= begin > start[steps.get(i).task];
                start[steps.get(i).task] = begin;
            }
        }
        return start;
    }

    private int begin(List<Draft.Step> steps, int index, int[] start) {
        Draft.Step step = steps.get(index);
        int task = step.task;
        int begin = start[task];
        for (int other = 0; other < network.size(); other++) {
            if (network.lag[other][task] > Network.NONE) {
                begin = Math.max(begin, start[other] + network.lag[other][task]);
            }
        }
        for (int i = 0; i < index; i++) {
            int other = steps.get(i).task;
            if (excludes(other, task)) {
                begin = Math.max(begin, start[other] + network.whole(other));
            }
            if (shares(step.people, steps.get(i).people)) {
                begin = Math.max(begin, start[other] + network.duration[other]
                        + network.walks.between(network.machine[other], network.machine[task]));
            }
        }
        return begin;
    }

    private static boolean shares(int[] people, int[] others) {
        return Arrays.stream(people).anyMatch(person -> Arrays.stream(others).anyMatch(other -> other == person));
    }

    private boolean excludes(int one, int other) {
        return network.exclusions.stream()
                .anyMatch(exclusion -> (exclusion.one().contains(one) && exclusion.other().contains(other))
                        || (exclusion.one().contains(other) && exclusion.other().contains(one)));
    }
}
