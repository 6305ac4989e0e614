package icequill.planner;

import icequill.work.MachineState;
import icequill.work.Qualification;
import java.util.List;
import java.util.Set;

/** What no timetable can undercut, by arithmetic alone. */
record LowerBounds(Network network, Crew crew) {

    /** The largest of the longest chain, of sets that exclude each other, the shared work, and what only some people may do. */
    int least() {
        return Math.max(Math.max(Math.max(chain(), excluded()), Math.max(shared(), rested())), qualified());
    }

    /** All of one set, then the longest chain from a task of the other; or the other way round, where that is shorter. */
    int excluded() {
        int longest = 0;
        for (Exclusion exclusion : network.exclusions) {
            int first = over(exclusion.one()) + rest(exclusion.other());
            int second = exclusion.free() ? over(exclusion.other()) + rest(exclusion.one()) : first;
            longest = Math.max(longest, Math.min(first, second));
        }
        return longest;
    }

    private int over(Set<Integer> tasks) {
        return tasks.stream().mapToInt(task -> network.head[task] + network.whole(task)).max().orElse(0);
    }

    private int rest(Set<Integer> tasks) {
        return tasks.stream().mapToInt(task -> network.tail[task]).max().orElse(0);
    }

    /** For each qualification the minutes of the tasks that need it, shared out over those who have it. */
    int qualified() {
        int longest = 0;
        for (Qualification qualification : Qualification.values()) {
            int minutes = 0;
            for (int task = 0; task < network.size(); task++) {
                boolean needed = network.tasks.get(task).needs().contains(qualification);
                minutes += needed ? network.duration[task] * network.people[task] : 0;
            }
            List<Crew.Member> people = crew.members().stream()
                    .filter(each -> each.qualified().contains(qualification)).toList();
            longest = minutes == 0 ? longest : Math.max(longest, capacity(people).least(minutes));
        }
        return longest;
    }

    /** The longest of the machines' chains: tasks and waits one after another, as if every machine had people of its own. */
    int chain() {
        int longest = 0;
        for (int task = 0; task < network.size(); task++) {
            longest = Math.max(longest, network.head[task] + network.tail[task]);
            longest = Math.max(longest, group(task));
        }
        return longest;
    }

    /** The chain through a machine's tasks of equal order, whose minutes the crew shares. */
    private int group(int first) {
        int minutes = 0;
        int head = Integer.MAX_VALUE;
        int rest = Integer.MAX_VALUE;
        for (int task = 0; task < network.size(); task++) {
            if (network.machine[task] == network.machine[first]
                    && network.tasks.get(task).order() == network.tasks.get(first).order()) {
                minutes += network.duration[task] * network.people[task];
                head = Math.min(head, network.head[task]);
                rest = Math.min(rest, network.tail[task] - network.duration[task]);
            }
        }
        return head + Math.ceilDiv(minutes, crew.size()) + rest;
    }

    /**
     * Attended minutes of all people, and the walks and idle minutes that no order of work can spare them, shared out over the
     * crew. Everybody's first arrival is free, at the dearest machine.
     */
    int shared() {
        return capacity(crew.members()).least(sharedMinutes());
    }

    private int sharedMinutes() {
        int minutes = attended();
        for (int machine = 0; machine < network.walks.machines().size(); machine++) {
            minutes += hasWork(machine) ? network.walks.arrival(machine) : 0;
        }
        for (int task = 0; task < network.size(); task++) {
            minutes += spared(task);
        }
        return Math.max(0, minutes - crew.size() * dearest());
    }

    /** The longest of the shortest walks to each machine. */
    private int dearest() {
        int dearest = 0;
        for (int machine = 0; machine < network.walks.machines().size(); machine++) {
            dearest = hasWork(machine) ? Math.max(dearest, network.walks.arrival(machine)) : dearest;
        }
        return dearest;
    }

    private static Capacity capacity(List<Crew.Member> people) {
        return new Capacity(people.stream().mapToInt(Crew.Member::from).toArray(),
                people.stream().mapToInt(Crew.Member::until).toArray());
    }

    /**
     * How long the shared work takes with the breaks of those who do it. In a break nobody works or walks, and of the idle minutes that
     * no order of work can spare only those before the task that follows it may fall into it.
     */
    private int rested() {
        if (crew.rest().isEmpty()) {
            return 0;
        }
        Crew.Rest rest = crew.rest().get();
        int saved = Math.max(0, rest.minutes() - dearest());
        int span = rest.after() + rest.minutes() + network.walks.longest();
        int minutes = sharedMinutes();
        int minute = 0;
        for (int most = 0; most * crew.size() < minutes; minute++) {
            int breaks = Math.max(0, Math.ceilDiv(minute + 1 - rest.after(), span));
            most = Math.max(most, minute + 1 - breaks * saved);
        }
        return minute;
    }

    int attended() {
        int minutes = 0;
        for (int task = 0; task < network.size(); task++) {
            minutes += network.duration[task] * network.people[task];
        }
        return minutes;
    }

    private boolean hasWork(int machine) {
        for (int task = 0; task < network.size(); task++) {
            if (network.machine[task] == machine && network.people[task] > 0) {
                return true;
            }
        }
        return false;
    }

    /**
     * What the wait after a task costs at least: whoever does the next task either came within the wait, or stayed and was idle
     * but for tasks that fit into it. The waits counted at a machine follow one another, so no minute is counted twice.
     */
    int spared(int task) {
        int next = next(task);
        if (network.pause[task] == 0 || next < 0 || network.people[next] == 0 || within(task)) {
            return 0;
        }
        int idle = network.lag[task][next] - network.duration[task];
        for (int other = 0; other < network.size(); other++) {
            boolean fits = other != task && other != next && network.machine[other] == network.machine[task]
                    && !network.before(other, task) && !network.before(next, other);
            idle -= fits ? network.duration[other] * network.people[other] : 0;
        }
        return Math.max(0, Math.min(idle, network.walks.arrival(network.machine[task])));
    }

    /**
     * The same for every task, as far as it is sure to be spent after the task has begun: a walk that ends within the wait may
     * have begun before it.
     */
    int[] sparedAfterStart() {
        int[] spared = new int[network.size()];
        for (int task = 0; task < spared.length; task++) {
            spared[task] = Math.min(spared(task), network.duration[task]);
        }
        return spared;
    }

    /** The first task that must wait for the wait after this one to pass; -1 if none. */
    private int next(int task) {
        for (int other = task + 1; other < network.size() && network.machine[other] == network.machine[task]; other++) {
            if (network.tasks.get(other).state() != MachineState.ANY
                    && network.lag[task][other] >= network.whole(task)) {
                return other;
            }
        }
        return -1;
    }

    /** Whether a wait lies within that of an earlier task, which is counted already. */
    private boolean within(int task) {
        for (int earlier = 0; earlier < task; earlier++) {
            int next = network.machine[earlier] == network.machine[task] && network.pause[earlier] > 0
                    ? next(earlier)
                    : -1;
            if (next > task && network.people[next] > 0) {
                return true;
            }
        }
        return false;
    }
}
