package icequill.planner;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** How long people of a timetable work without a break, and when they have one. */
final class Stretches {

    private final Network network;
    private final Crew crew;
    private final Sequence sequence;
    private final int[] start;

    /** @param start of each task, by position */
    Stretches(Network network, Crew crew, Sequence sequence, int[] start) {
        this.network = network;
        this.crew = crew;
        this.sequence = sequence;
        this.start = start;
    }

    /**
     * Tasks of somebody with no break between them; a break lies between two stretches.
     *
     * @param tasks in his order
     */
    record Stretch(int person, List<Integer> tasks) {
        int first() {
            return tasks.getFirst();
        }

        int last() {
            return tasks.getLast();
        }
    }

    /** Those of somebody, by time, each as long as it can be; too long a one where no gap is left for his break. */
    List<Stretch> of(int person, Crew.Rest rest) {
        List<Integer> tasks = sequence.steps().stream().filter(step -> step.people().contains(person))
                .map(Sequence.Step::task).sorted(Comparator.comparingInt(task -> start[task])).toList();
        List<Stretch> found = new ArrayList<>();
        int from = 0;
        int gap = -1;
        for (int i = 0; i < tasks.size(); i++) {
            gap = i > from && gap(tasks.get(i - 1), tasks.get(i)) >= rest.minutes() ? i : gap;
            if (over(tasks.get(i)) - start[tasks.get(from)] > rest.after() && gap > from) {
                found.add(new Stretch(person, tasks.subList(from, gap)));
                from = gap;
            }
        }
        if (from < tasks.size()) {
            found.add(new Stretch(person, tasks.subList(from, tasks.size())));
        }
        return found;
    }

    List<Stretch> all(Crew.Rest rest) {
        return IntStream.range(0, crew.size()).boxed().flatMap(person -> of(person, rest).stream()).toList();
    }

    /**
     * A break of somebody.
     *
     * @param before the task that he did last
     * @param after the task that comes next
     * @param least minutes from the start of that to the start of this
     */
    record Break(int person, int before, int after, int least) {}

    List<Break> breaks(Crew.Rest rest) {
        List<Stretch> all = all(rest);
        return IntStream.range(1, all.size()).filter(i -> all.get(i - 1).person() == all.get(i).person())
                .mapToObj(i -> breakBetween(all.get(i - 1), all.get(i), rest)).toList();
    }

    private Break breakBetween(Stretch one, Stretch other, Crew.Rest rest) {
        return new Break(one.person(), one.last(), other.first(), network.duration[one.last()]
                + walk(one.last(), other.first()) + rest.minutes());
    }

    /** Whether nobody goes without a break, and nobody is alone on site where he must not be. */
    boolean areRulesKept() {
        return crew.rest().map(rest -> all(rest).stream().allMatch(each -> isKept(each, rest))).orElse(true)
                && sequence.steps().stream().allMatch(this::isAccompanied);
    }

    private boolean isKept(Stretch stretch, Crew.Rest rest) {
        return over(stretch.last()) - start[stretch.first()] <= rest.after();
    }

    private boolean isAccompanied(Sequence.Step step) {
        return !network.tasks.get(step.task()).accompanied() || step.people().size() != 1
                || crew.isAccompanied(step.people().getFirst(), start[step.task()], over(step.task()));
    }

    int over(int task) {
        return start[task] + network.duration[task];
    }

    /** Minutes between two tasks of somebody in which he does not walk. */
    private int gap(int one, int other) {
        return start[other] - over(one) - walk(one, other);
    }

    int walk(int one, int other) {
        return network.walks.between(network.machine[one], network.machine[other]);
    }
}
