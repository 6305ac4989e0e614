package icequill.planner;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Tries every start of every task with everybody, for longer and longer ends: slow, and plain enough to be believed. */
record EveryStart(VisitWork work, Crew people, List<MachineTask> tasks, int end) {

    static int shortest(VisitWork work, Crew people) {
        List<MachineTask> tasks = work.tasks().stream().sorted(Comparator.comparing(MachineTask::machine)
                .thenComparingInt(MachineTask::order)).toList();
        return IntStream.iterate(0, end -> end + 1)
                .filter(end -> new EveryStart(work, people, tasks, end).fits(new ArrayList<>())).findFirst()
                .orElseThrow();
    }

    private boolean fits(List<Entry> placed) {
        if (placed.size() == tasks.size()) {
            // What is over sooner was tried for a shorter end.
            return over(placed) == end && isAllowed(placed);
        }
        MachineTask task = tasks.get(placed.size());
        int last = end - task.attended() - task.pause();
        for (int start = soonest(task, placed); start <= last; start++) {
            for (List<Integer> people : choices(task.people())) {
                Entry entry = new Entry(task.machine(), task.name(), task.order(), Kind.TASK, task.state(), people,
                        start,
                        start + task.attended(), 0);
                if (placed.stream().noneMatch(other -> collides(other, entry))) {
                    placed.add(entry);
                    boolean found = fits(placed);
                    placed.removeLast();
                    if (found) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Tasks are placed by machine and order, so none begins before those of lower order that are placed. */
    private int soonest(MachineTask task, List<Entry> placed) {
        int soonest = 0;
        for (int i = 0; i < placed.size(); i++) {
            MachineTask other = tasks.get(i);
            if (other.machine().equals(task.machine()) && other.order() < task.order()) {
                soonest = Math.max(soonest, placed.get(i).end());
            }
        }
        return soonest;
    }

    private boolean collides(Entry one, Entry other) {
        List<String> machines = work.walks().machines();
        int walk = work.walks().between(machines.indexOf(one.machine()), machines.indexOf(other.machine()));
        return one.start() < other.end() + walk && other.start() < one.end() + walk
                && !Collections.disjoint(one.people(), other.people());
    }

    private List<List<Integer>> choices(int needed) {
        return needed == people.size()
                ? List.of(IntStream.range(0, people.size()).boxed().toList())
                : IntStream.range(0, people.size()).mapToObj(List::of).toList();
    }

    private boolean isAllowed(List<Entry> placed) {
        return TimetableRules.areKept(work, people,
                new Timetable(placedEnd(placed), 0, walking(placed), people.size(), List.of(), placed));
    }

    private int over(List<Entry> placed) {
        int over = 0;
        for (int i = 0; i < placed.size(); i++) {
            over = Math.max(over, placed.get(i).end() + tasks.get(i).pause());
        }
        return over;
    }

    private int placedEnd(List<Entry> placed) {
        return placed.stream().mapToInt(Entry::end).max().orElse(0);
    }

    private int walking(List<Entry> placed) {
        return IntStream.range(0, people.size()).map(person -> walking(person, placed)).sum();
    }

    private int walking(int person, List<Entry> placed) {
        List<String> machines = work.walks().machines();
        List<Entry> mine = placed.stream().filter(entry -> entry.people().contains(person))
                .sorted(Comparator.comparingInt(Entry::start)).toList();
        return IntStream.range(1, mine.size()).map(i -> work.walks().between(
                machines.indexOf(mine.get(i - 1).machine()), machines.indexOf(mine.get(i).machine()))).sum();
    }
}
