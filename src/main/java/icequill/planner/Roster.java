package icequill.planner;

import java.util.Arrays;
import java.util.Optional;

/** Where each person is when, while a timetable is put together: a task may go into any gap that its walks leave. */
final class Roster {

    private static final int FEW = 16;

    /** When somebody could begin who cannot. */
    static final int NEVER = Integer.MAX_VALUE;

    private final WalkTimes walks;
    private final Crew crew;
    private final Optional<Crew.Rest> rest;
    private boolean urgent;
    private final int[] count;
    private final int[][] from;
    private final int[][] until;
    private final int[][] machine;

    /** @param rest the break that everybody gets; empty for none */
    Roster(WalkTimes walks, Crew crew, Optional<Crew.Rest> rest) {
        this.walks = walks;
        this.crew = crew;
        this.rest = rest;
        int people = crew.size();
        count = new int[people];
        from = new int[people][FEW];
        until = new int[people][FEW];
        machine = new int[people][FEW];
    }

    void clear() {
        Arrays.fill(count, 0);
        urgent = false;
    }

    /**
     * The soonest at which somebody can begin at a machine and stay for some minutes, not before a minute, whenever he must leave; or
     * {@link #NEVER}.
     */
    int soonest(int person, int where, int earliest, int minutes) {
        int begin = Math.max(earliest, crew.members().get(person).from());
        for (int next = 0; next < count[person]; next++) {
            if (until[person][next] + walks.between(machine[person][next], where) <= begin) {
                continue;
            }
            int latest = from[person][next] - minutes - walks.between(where, machine[person][next]);
            if (begin <= latest) {
                int rested = rested(person, next, where, begin, minutes);
                if (rested <= latest && rested != NEVER) {
                    return rested;
                }
            }
            begin = Math.max(begin, until[person][next] + walks.between(machine[person][next], where));
        }
        return rested(person, count[person], where, begin, minutes);
    }

    /** Whether breaks must wait. */
    void hurry(boolean now) {
        urgent = now;
    }

    /** When he can begin before what is his next without working too long: at once, or after a break. */
    private int rested(int person, int next, int where, int begin, int minutes) {
        if (rest.isEmpty() || urgent || isRested(person, next, where, begin, minutes)) {
            return begin;
        }
        if (next == 0) {
            return NEVER;
        }
        int later = until[person][next - 1] + walks.between(machine[person][next - 1], where)
                + rest.get().minutes();
        return later > begin && isRested(person, next, where, later, minutes) ? later : NEVER;
    }

    private boolean isRested(int person, int next, int where, int begin, int minutes) {
        Crew.Rest due = rest.orElseThrow();
        int over = begin + minutes;
        int first = begin;
        int place = where;
        for (int i = next - 1; i >= 0
                && first - until[person][i] - walks.between(machine[person][i], place) < due.minutes(); i--) {
            first = from[person][i];
            place = machine[person][i];
        }
        place = where;
        for (int i = next; i < count[person]
                && from[person][i] - over - walks.between(place, machine[person][i]) < due.minutes(); i++) {
            over = until[person][i];
            place = machine[person][i];
        }
        return over - first <= due.after();
    }

    void give(int person, int where, int begin, int over) {
        if (count[person] == from[person].length) {
            from[person] = Arrays.copyOf(from[person], 2 * count[person]);
            until[person] = Arrays.copyOf(until[person], 2 * count[person]);
            machine[person] = Arrays.copyOf(machine[person], 2 * count[person]);
        }
        int at = count[person]++;
        while (at > 0 && from[person][at - 1] >= over) {
            from[person][at] = from[person][at - 1];
            until[person][at] = until[person][at - 1];
            machine[person][at] = machine[person][at - 1];
            at--;
        }
        from[person][at] = begin;
        until[person][at] = over;
        machine[person][at] = where;
    }

    void takeBack(int person, int begin) {
        int at = 0;
        while (from[person][at] != begin) {
            at++;
        }
        count[person]--;
        for (int i = at; i < count[person]; i++) {
            from[person][i] = from[person][i + 1];
            until[person][i] = until[person][i + 1];
            machine[person][i] = machine[person][i + 1];
        }
    }

    /** When the last that he does is over; 0 where he does nothing. */
    int lastOver(int person) {
        return count[person] == 0 ? 0 : until[person][count[person] - 1];
    }

    /** How far somebody walks from what he does before a minute to a machine; nothing to his first. */
    int walkTo(int person, int where, int begin) {
        int last = -1;
        for (int i = 0; i < count[person] && from[person][i] < begin; i++) {
            last = machine[person][i];
        }
        return walks.from(last, where);
    }

    /** Minutes of all people together. */
    int walking() {
        int minutes = 0;
        for (int person = 0; person < count.length; person++) {
            for (int i = 1; i < count[person]; i++) {
                minutes += walks.between(machine[person][i - 1], machine[person][i]);
            }
        }
        return minutes;
    }
}
