package icequill.planner;

import icequill.planner.Timetable.Entry;
import icequill.planner.Timetable.Kind;
import icequill.work.DustLevel;
import icequill.work.MachineState;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Every hard rule, asked of a finished timetable, without the numbers that it was made from. */
record TimetableRules(VisitWork work, Crew crew, Timetable table) {

    /** Stands for a broken rule, as cheaply as can be: whoever tries every timetable breaks millions. */
    private static final class Broken extends RuntimeException {
        private static final long serialVersionUID = 1;

        Broken(String rule) {
            super(rule, null, false, false);
        }
    }

    static void check(VisitWork work, int crew, Timetable table) {
        check(work, new Crew(crew), table);
    }

    static void check(VisitWork work, Crew crew, Timetable table) {
        try {
            TimetableRules rules = new TimetableRules(work, crew, table);
            rules.check();
            crew.rest().ifPresent(rules::breaks);
        } catch (Broken broken) {
            throw new AssertionError(broken.getMessage() + ": " + table + " of " + work, broken);
        }
    }

    static boolean areKept(VisitWork work, Crew crew, Timetable table) {
        try {
            new TimetableRules(work, crew, table).check();
            return true;
        } catch (Broken broken) {
            return false;
        }
    }

    private static void rule(boolean kept, String rule) {
        if (!kept) {
            throw new Broken(rule);
        }
    }

    private void check() {
        rule(table.entries().stream().filter(entry -> entry.kind() == Kind.TASK).count() == work.tasks().size(),
                "each task stands there once");
        rule(table.minutes() == table.entries().stream().mapToInt(Entry::end).max().orElse(0),
                "its minutes are those to the last end");
        rule(table.bound() >= 0 && table.bound() <= table.minutes(), "the bound is no longer");
        for (MachineTask task : work.tasks()) {
            Entry entry = of(task);
            rule(entry.end() - entry.start() == task.attended(), "a task takes its minutes");
            people(task, entry.people());
            presence(task, entry);
            task.timer().ifPresent(timer -> timer(task, entry));
            for (MachineTask other : work.tasks()) {
                if (other.machine().equals(task.machine())) {
                    sequence(task, other);
                }
            }
        }
        table.overstays().forEach(this::overstay);
        int walked = 0;
        for (int person = 0; person < crew.size(); person++) {
            walked += walked(person);
        }
        rule(table.walking() == walked, "the walks add up");
        for (int person = 0; person < crew.size(); person++) {
            int each = person;
            crew.rest().ifPresent(rest -> rest(each, rest));
        }
        work.neverBothOff().forEach(this::pair);
        work.neverAllOff().forEach(this::set);
        work.tasks().stream().filter(task -> task.dust() == DustLevel.RAISES).forEach(this::dust);
    }

    private void people(MachineTask task, List<Integer> people) {
        rule(people.size() == (task.attended() == 0 ? 0 : task.people()) && Set.copyOf(people).size() == people.size(),
                "as many people as it takes");
        for (int person : people) {
            rule(person >= 0 && person < crew.size()
                    && crew.members().get(person).qualified().containsAll(task.needs()),
                    "only people who may be given it");
        }
    }

    private void presence(MachineTask task, Entry entry) {
        for (int person : entry.people()) {
            Crew.Member member = crew.members().get(person);
            rule(entry.start() >= member.from() && entry.end() <= leaves(person), "only people who are there");
        }
        rule(!task.accompanied() || entry.people().size() != 1 || IntStream.range(0, crew.size())
                .anyMatch(other -> isCompany(other, entry)), "nobody is alone who must not be");
    }

    private boolean isCompany(int other, Entry entry) {
        return !entry.people().contains(other) && crew.members().get(other).from() <= entry.start()
                && leaves(other) >= entry.end();
    }

    /** When somebody must leave, or for how long it is said that he stays. */
    private int leaves(int person) {
        return crew.members().get(person).until() + table.overstays().stream()
                .filter(each -> each.person() == person).mapToInt(Timetable.Overstay::minutes).sum();
    }

    /** Whoever is said to stay longer is at work until he leaves, or somebody is who must not be alone. */
    private void overstay(Timetable.Overstay overstay) {
        int leaves = leaves(overstay.person());
        rule(work.tasks().stream().anyMatch(task -> of(task).end() == leaves
                && (of(task).people().contains(overstay.person())
                        || (task.accompanied() && isCompany(overstay.person(), of(task))))),
                "nobody stays longer for nothing");
    }

    /** Runs of tasks without a gap that would do for a break are no longer than they may be. */
    private void rest(int person, Crew.Rest rest) {
        List<Entry> tasks = of(person, Kind.TASK);
        int from = 0;
        for (int i = 0; i < tasks.size(); i++) {
            Entry task = tasks.get(i);
            if (i == 0 || task.start() - tasks.get(i - 1).end()
                    - walk(tasks.get(i - 1).machine(), task.machine()) >= rest.minutes()) {
                from = task.start();
            }
            rule(task.end() - from <= rest.after(), "nobody works too long without a break");
        }
    }

    private List<Entry> of(int person, Kind kind) {
        return table.entries().stream().filter(entry -> entry.people().contains(person) && entry.kind() == kind)
                .sorted(Comparator.comparingInt(Entry::start).thenComparingInt(Entry::end)).toList();
    }

    /** The breaks that are said are enough, and free. */
    private void breaks(Crew.Rest rest) {
        for (int person = 0; person < crew.size(); person++) {
            breaks(of(person, Kind.TASK), of(person, Kind.BREAK), rest);
        }
    }

    private static void breaks(List<Entry> tasks, List<Entry> breaks, Crew.Rest rest) {
        for (Entry task : tasks) {
            int rested = breaks.stream().filter(each -> each.end() <= task.start()).mapToInt(Entry::end).max()
                    .orElse(0);
            int since = tasks.stream().mapToInt(Entry::start).filter(start -> start >= rested).min().orElseThrow();
            rule(task.end() - since <= rest.after(), "the breaks that are said are enough");
            rule(breaks.stream().noneMatch(each -> each.start() < task.end() && each.end() > task.start()),
                    "a break is no work");
        }
        rule(breaks.stream().allMatch(each -> each.end() - each.start() == rest.minutes()),
                "a break has its minutes");
    }

    private Entry of(MachineTask task) {
        for (Entry entry : table.entries()) {
            if (entry.kind() == Kind.TASK && entry.machine().equals(task.machine())
                    && entry.task().equals(task.name())) {
                return entry;
            }
        }
        throw new Broken("each task stands there");
    }

    private int over(MachineTask task) {
        return of(task).end() + Math.max(task.unattended(), task.timer().map(timer -> timer.least()).orElse(0));
    }

    private void timer(MachineTask pour, Entry entry) {
        MachineTask flush = work.tasks().stream()
                .filter(task -> task.machine().equals(pour.machine()) && task.flushes() && task.order() > pour.order())
                .min(Comparator.comparingInt(MachineTask::order)).orElseThrow();
        int flushed = of(flush).start();
        rule(flushed >= entry.end() + pour.timer().orElseThrow().least()
                && flushed <= entry.start() + pour.timer().orElseThrow().most(), "a flush is in time");
        int last = work.tasks().stream()
                .filter(task -> task.machine().equals(pour.machine()) && task.state() == MachineState.CIRCULATING)
                .mapToInt(this::over).max().orElse(0);
        work.tasks().stream().filter(
                task -> task.machine().equals(pour.machine()) && task.state() == MachineState.DE_ENERGIZED)
                .forEach(task -> rule(of(task).end() <= entry.start() || of(task).start() >= last,
                        "nothing is done with the power off while the pump runs"));
    }

    private void sequence(MachineTask one, MachineTask other) {
        if (one.order() < other.order()) {
            rule(of(other).start() >= (other.state() == MachineState.ANY ? of(one).end() : over(one)),
                    "tasks come in their order");
        }
        boolean states = one.state() != other.state() && one.state() != MachineState.ANY
                && other.state() != MachineState.ANY;
        if (one.order() == other.order() && states) {
            rule(of(other).start() >= over(one) || of(one).start() >= over(other), "a machine is in one state");
        }
    }

    private int walked(int person) {
        List<Entry> mine = table.entries().stream()
                .filter(entry -> entry.people().contains(person) && entry.kind() == Kind.TASK)
                .sorted(Comparator.comparingInt(Entry::start).thenComparingInt(Entry::end)).toList();
        int walked = 0;
        for (int i = 1; i < mine.size(); i++) {
            int walk = walk(mine.get(i - 1).machine(), mine.get(i).machine());
            rule(mine.get(i).start() >= mine.get(i - 1).end() + walk, "nobody is in two places");
            walked += walk;
        }
        return walked;
    }

    private int walk(String from, String to) {
        List<String> machines = work.walks().machines();
        return work.walks().between(machines.indexOf(from), machines.indexOf(to));
    }

    /** From when to when a machine makes no ice; to the end of days when nobody starts it again. */
    private int[] off(String machine) {
        List<MachineTask> tasks = work.tasksAt(machine);
        int from = Integer.MAX_VALUE;
        int order = -1;
        for (MachineTask task : tasks) {
            if (task.state() == MachineState.CIRCULATING || task.state() == MachineState.DE_ENERGIZED) {
                from = Math.min(from, of(task).start());
                order = Math.max(order, task.order());
            }
        }
        int last = order;
        int until = tasks.stream().filter(task -> task.state() == MachineState.MAKING_ICE && task.order() > last)
                .mapToInt(task -> of(task).end()).min().orElse(Integer.MAX_VALUE);
        return new int[]{from, until};
    }

    private void pair(VisitWork.Pair pair) {
        int[] one = off(pair.one());
        int[] other = off(pair.other());
        rule(one[1] <= other[0] || other[1] <= one[0], "never both off");
    }

    private void set(Set<String> machines) {
        int from = machines.stream().mapToInt(machine -> off(machine)[0]).max().orElseThrow();
        int until = machines.stream().mapToInt(machine -> off(machine)[1]).min().orElseThrow();
        rule(from >= until, "never all off");
    }

    private void dust(MachineTask dusty) {
        for (String machine : work.walks().machines()) {
            List<MachineTask> clean = work.tasksAt(machine).stream().filter(task -> task.dust() == DustLevel.SPOILED)
                    .toList();
            if (!clean.isEmpty() && walk(dusty.machine(), machine) == 0) {
                int from = clean.stream().mapToInt(task -> of(task).start()).min().orElseThrow();
                int until = clean.stream().mapToInt(this::over).max().orElseThrow();
                rule(over(dusty) <= from || of(dusty).start() >= until, "no dust while it would spoil");
                if (machine.equals(dusty.machine())) {
                    rule(of(dusty).end() <= from, "dust comes first at its machine");
                }
            }
        }
    }
}
