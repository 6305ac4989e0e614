package icequill.planner;

import java.util.Arrays;
import java.util.Optional;

/**
 * Gives tasks to people: to those who can be there first, of several to those who walk least. Nobody is kept longer than he may stay
 * unless nobody else can do it; then it is he who must stay the fewest minutes more.
 */
final class Staffing {

    private final Network network;
    private final Crew crew;
    private final boolean strict;
    private final Roster roster;
    private final boolean[][] fit;
    private final int[] soonest;
    /** By person, the minutes for which he would stay longer than he would have to without the task. */
    private final int[] longer;
    private final boolean[] taken;

    /** @param strict whether breaks are kept, nobody is alone on site who must not be, and somebody stays longer where it must be */
    Staffing(Network network, Crew crew, boolean strict) {
        this.network = network;
        this.crew = crew;
        this.strict = strict;
        roster = new Roster(network.walks, crew, strict ? crew.rest() : Optional.empty());
        fit = network.fit(crew);
        soonest = new int[crew.size()];
        longer = new int[crew.size()];
        taken = new boolean[crew.size()];
    }

    void clear() {
        roster.clear();
    }

    /** Whether breaks must wait. */
    void hurry(boolean now) {
        roster.hurry(now);
    }

    /** Minutes that all people walk. */
    int walking() {
        return roster.walking();
    }

    /** Some people are at a task from a minute on. */
    void give(int task, int[] people, int begin) {
        for (int person : people) {
            roster.give(person, network.machine[task], begin, begin + network.duration[task]);
        }
    }

    void takeBack(int[] people, int begin) {
        for (int person : people) {
            roster.takeBack(person, begin);
        }
    }

    /** When enough people can begin a task at the soonest, not before a minute, each of them in the hours in which he is there. */
    int begin(int task, int earliest) {
        return begin(task, earliest, false, true);
    }

    /** The same where somebody stays longer for it; {@link Roster#NEVER} where that is not allowed for either. */
    int beginStaying(int task, int earliest, boolean atOnce) {
        return strict ? begin(task, earliest, true, atOnce) : Roster.NEVER;
    }

    private int begin(int task, int earliest, boolean staying, boolean atOnce) {
        int needed = network.people[task];
        Arrays.fill(taken, false);
        int begin = earliest;
        int all = needed == 0 ? begin : Roster.NEVER;
        while (all != begin) {
            begin = all == Roster.NEVER ? begin : all;
            for (int person = 0; person < soonest.length; person++) {
                soonest[person] = fit[person][task] ? soonest(person, task, begin, staying) : Roster.NEVER;
                longer[person] = longer(person, soonest[person] + network.duration[task], staying);
            }
            all = choose(task, needed, atOnce);
            if (all == Roster.NEVER) {
                return all;
            }
        }
        return begin;
    }

    /** Those whom {@code begin} has chosen last. */
    int[] chosen(int needed) {
        int[] chosen = new int[needed];
        int found = 0;
        for (int person = 0; person < taken.length; person++) {
            if (taken[person]) {
                chosen[found++] = person;
            }
        }
        return chosen;
    }

    private int longer(int person, int over, boolean staying) {
        return staying
                ? Math.max(0, over - Math.max(crew.members().get(person).until(), roster.lastOver(person)))
                : 0;
    }

    /** When all who are chosen can begin. */
    private int choose(int task, int needed, boolean atOnce) {
        Arrays.fill(taken, false);
        int begin = 0;
        for (int found = 0; found < needed; found++) {
            int best = -1;
            for (int person = 0; person < taken.length; person++) {
                if (!taken[person] && soonest[person] != Roster.NEVER
                        && (best < 0 || isBefore(person, best, task, atOnce))) {
                    best = person;
                }
            }
            if (best < 0) {
                return Roster.NEVER;
            }
            taken[best] = true;
            begin = Math.max(begin, soonest[best]);
        }
        return begin;
    }

    private boolean isBefore(int one, int other, int task, boolean atOnce) {
        int sooner = Integer.compare(soonest[one], soonest[other]);
        int shorter = Integer.compare(longer[one], longer[other]);
        int order = atOnce ? sooner : shorter;
        if (order == 0) {
            order = atOnce ? shorter : sooner;
        }
        if (order == 0) {
            int machine = network.machine[task];
            order = Integer.compare(roster.walkTo(one, machine, soonest[one]),
                    roster.walkTo(other, machine, soonest[other]));
        }
        return order < 0;
    }

    /** When somebody can begin a task, with somebody else on site where he must not be alone; or {@link Roster#NEVER}. */
    private int soonest(int person, int task, int earliest, boolean staying) {
        int minutes = network.duration[task];
        int begin = roster.soonest(person, network.machine[task], earliest, minutes);
        while (strict && begin != Roster.NEVER && network.people[task] == 1 && network.tasks.get(task).accompanied()
                && !(staying ? crew.hasCompany(person, begin) : crew.isAccompanied(person, begin, begin + minutes))) {
            int alone = begin;
            int next = crew.members().stream().mapToInt(Crew.Member::from).filter(from -> from > alone).min()
                    .orElse(Roster.NEVER);
            begin = next == Roster.NEVER ? next : roster.soonest(person, network.machine[task], next, minutes);
        }
        boolean inTime = begin != Roster.NEVER
                && (staying || begin + minutes <= crew.members().get(person).until());
        return inTime ? begin : Roster.NEVER;
    }
}
