package icequill.planner;

import java.util.Arrays;

/** Where each person is when, while a timetable is put together: a task may go into any gap that its walks leave. */
final class Roster {

    private static final int FEW = 16;

    private final WalkTimes walks;
    private final int[] count;
    private final int[][] from;
    private final int[][] until;
    private final int[][] machine;

    Roster(WalkTimes walks, int people) {
        this.walks = walks;
        count = new int[people];
        from = new int[people][FEW];
        until = new int[people][FEW];
        machine = new int[people][FEW];
    }

    void clear() {
        Arrays.fill(count, 0);
    }

    /** The soonest at which somebody can begin at a machine and stay for some minutes, not before a minute. */
    int soonest(int person, int where, int earliest, int minutes) {
        int begin = earliest;
        for (int next = 0; next < count[person]; next++) {
            if (until[person][next] + walks.between(machine[person][next], where) <= begin) {
                continue;
            }
            if (begin + minutes + walks.between(where, machine[person][next]) <= from[person][next]) {
                return begin;
            }
            begin = Math.max(begin, until[person][next] + walks.between(machine[person][next], where));
        }
        return begin;
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
