package icequill.planner;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Critical path method for a sequence: the earliest start of each task by a forward pass, its spare minutes by a backward pass. */
record CriticalPaths(Network network, Crew crew, Sequence sequence, Started started) {

    /** @param bound no timetable is shorter */
    Timetable timetable(int bound) {
        List<List<After>> after = after();
        int[] start = starts(after);
        Stretches stretches = new Stretches(network, crew, sequence, start);
        int[] latest = latest(after, start, stretches);
        List<Entry> entries = new ArrayList<>();
        int end = 0;
        for (Sequence.Step step : sequence.steps()) {
            MachineTask task = network.tasks.get(step.task());
            int begin = start[step.task()];
            int over = begin + task.attended();
            int whole = over + task.pause();
            int spare = started.isDone(step.task()) ? 0 : Math.max(0, latest[step.task()] - begin);
            int flush = task.timer().isPresent() ? network.flushAfter(step.task()) : -1;
            end = Math.max(end, whole);
            entries.add(Entry.of(Kind.TASK, task, step.people(), begin, over, spare));
            if (whole > over) {
                entries.add(Entry.of(Kind.WAIT, task, List.of(), over,
                        flush < 0 ? whole : Math.max(over, start[flush]), spare));
            }
        }
        crew.rest().ifPresent(rest -> breaks(stretches, rest, entries));
        entries.sort(Comparator.comparingInt(Entry::start)
                .thenComparingInt(entry -> network.walks.machines().indexOf(entry.machine()))
                .thenComparingInt(Entry::end).thenComparing(Entry::kind));
        return new Timetable(end, Math.min(bound, end), sequence.walking(), crew.size(), departures(start).overstays(),
                entries);
    }

    /** Who stays longer than he may. */
    List<Timetable.Overstay> overstays() {
        return departures(starts(after())).overstays();
    }

    private Departures departures(int[] start) {
        int[][] people = new int[start.length][0];
        sequence.steps().forEach(step -> people[step.task()] = step.people().stream().mapToInt(Integer::intValue)
                .toArray());
        return new Departures(network, crew, start, people);
    }

    /** Each lies before the walk to what comes after it. */
    private void breaks(Stretches stretches, Crew.Rest rest, List<Entry> entries) {
        for (Stretches.Break each : stretches.breaks(rest)) {
            MachineTask last = network.tasks.get(each.before());
            int begin = stretches.over(each.before());
            entries.add(Entry.of(Kind.BREAK, last, List.of(each.person()), begin, begin + rest.minutes(), 0));
        }
    }

    Stretches stretches() {
        return new Stretches(network, crew, sequence, starts(after()));
    }

    /** The longest ways from the beginning: starts rise until every lag, walk and timer is kept. */
    private int[] starts(List<List<After>> after) {
        int[] start = new int[network.size()];
        if (sequence.isTimed()) {
            sequence.steps().forEach(step -> start[step.task()] = step.begin());
            return start;
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < after.size(); i++) {
                int task = sequence.steps().get(i).task();
                int begin = Math.max(begin(task, start), begin(after.get(i), start));
                for (int person : sequence.steps().get(i).people()) {
                    begin = Math.max(begin, crew.members().get(person).from());
                }
                changed |= begin > start[task];
                start[task] = Math.max(start[task], begin);
            }
        }
        return start;
    }

    /**
     * The same from the end: until when each task may begin so that all after it is in time, each flush by the pouring that went as
     * planned.
     */
    private int[] latest(List<List<After>> after, int[] start, Stretches stretches) {
        int end = IntStream.range(0, start.length).map(task -> start[task] + network.whole(task)).max().orElse(0);
        int[] latest = IntStream.range(0, start.length).map(task -> end - network.whole(task)).toArray();
        sequence.steps().forEach(step -> network.tasks.get(step.task()).timer().ifPresent(timer -> {
            int flush = network.flushAfter(step.task());
            latest[flush] = Math.min(latest[flush], start[step.task()] + timer.most());
        }));
        int[] leaves = departures(start).minutes();
        sequence.steps().forEach(step -> latest[step.task()] = Math.min(latest[step.task()],
                leaving(step, start, leaves)));
        crew.rest().ifPresent(rest -> stretches.all(rest).forEach(stretch -> stretch.tasks().forEach(
                task -> lower(latest, task, start[stretch.first()] + rest.after() - network.duration[task]))));
        List<Stretches.Break> breaks = crew.rest().map(stretches::breaks).orElse(List.of());
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Stretches.Break each : breaks) {
                changed |= lower(latest, each.before(), latest[each.after()] - each.least());
            }
            for (int i = after.size() - 1; i >= 0; i--) {
                int task = sequence.steps().get(i).task();
                for (After earlier : after.get(i)) {
                    changed |= lower(latest, earlier.task(), latest[task] - earlier.minutes());
                }
                for (int other = 0; other < start.length; other++) {
                    if (network.lag[other][task] >= 0) {
                        changed |= lower(latest, other, latest[task] - network.lag[other][task]);
                    }
                }
            }
        }
        return latest;
    }

    /** Until when a task may begin that is over before those leave who do it, or whose company is needed. */
    private int leaving(Sequence.Step step, int[] start, int[] leaves) {
        int begin = start[step.task()];
        int over = begin + network.duration[step.task()];
        int latest = step.people().stream().mapToInt(person -> leaves[person]).min().orElse(Crew.TO_THE_END);
        if (network.tasks.get(step.task()).accompanied() && step.people().size() == 1) {
            latest = Math.min(latest, IntStream.range(0, crew.size())
                    .filter(other -> !step.people().contains(other) && crew.members().get(other).from() <= begin)
                    .map(other -> leaves[other]).filter(leave -> leave >= over).max().orElse(over));
        }
        return latest == Crew.TO_THE_END ? latest : latest - network.duration[step.task()];
    }

    private static boolean lower(int[] latest, int task, int minute) {
        boolean lower = minute < latest[task];
        latest[task] = Math.min(latest[task], minute);
        return lower;
    }

    /** What begins so many minutes after another task has begun at the soonest. */
    private record After(int task, int minutes) {}

    /** For each step those before it that keep its people or its machine; of all that somebody does the last. */
    private List<List<After>> after() {
        List<List<After>> all = new ArrayList<>();
        int[] last = new int[crew.size()];
        Arrays.fill(last, -1);
        for (Sequence.Step step : sequence.steps()) {
            List<After> after = new ArrayList<>();
            for (int person : step.people()) {
                int other = last[person];
                if (other >= 0) {
                    after.add(new After(other, network.duration[other]
                            + network.walks.between(network.machine[other], network.machine[step.task()])));
                }
                last[person] = step.task();
            }
            sequence.steps().subList(0, all.size()).stream().map(Sequence.Step::task)
                    .filter(other -> network.excludes(other, step.task()))
                    .forEach(other -> after.add(new After(other, network.whole(other))));
            all.add(after);
        }
        return all;
    }

    private static int begin(List<After> after, int[] start) {
        return after.stream().mapToInt(each -> start[each.task()] + each.minutes()).max().orElse(0);
    }

    private int begin(int task, int[] start) {
        int begin = 0;
        for (int other = 0; other < network.size(); other++) {
            if (network.lag[other][task] > Network.NONE) {
                begin = Math.max(begin, start[other] + network.lag[other][task]);
            }
        }
        return begin;
    }
}
