package icequill.planner;

import icequill.problem.Check;
import icequill.work.MachineState;
import java.util.List;

/**
 * When each task of a visit is done, and by whom. Minutes count from the beginning of the visit.
 *
 * @param minutes until everything is done, waits and breaks included
 * @param bound no timetable for this crew is shorter, whoever of them stayed longer where somebody does; at most {@code minutes}
 * @param walking minutes of all people together
 * @param crew how many people it was made for
 * @param overstays those who stay longer than they may, by number; none where everybody can leave when he must
 * @param entries by start, then by machine, then by task
 */
public record Timetable(int minutes, int bound, int walking, int crew, List<Overstay> overstays, List<Entry> entries) {

    /**
     * Somebody who stays longer than he may, since nothing shorter was found.
     *
     * @param minutes from when he must leave to when he can, from 1
     */
    public record Overstay(int person, int minutes) {
        public Overstay {
            Check.that(minutes > 0, "does not stay longer: " + person);
        }
    }

    /**
     * A task, the wait after it, or a break.
     *
     * @param machine by id
     * @param task by name
     * @param order the task's place among those of its machine
     * @param kind whether somebody is at it
     * @param people who, numbered from 0, rising; none for a wait, nor for a task of no minutes
     * @param start inclusive
     * @param end exclusive
     * @param spare minutes by which the task may begin later, after all before it went as planned, without a longer visit or a limit
     *        broken; of a wait those of its task
     */
    public record Entry(String machine, String task, int order, Kind kind, MachineState state,
            List<Integer> people, int start, int end, int spare) {
        public Entry {
            people = List.copyOf(people);
            Check.inRange(start, 0, end, "start");
            Check.that(spare >= 0, "late before it began: " + task);
            Check.that(people.isEmpty() || kind != Kind.WAIT, "nobody is needed for a wait: " + task);
        }

        /** A task, the wait after it, or the break of somebody who was last at it. */
        public static Entry of(Kind kind, MachineTask task, List<Integer> people, int start, int end, int spare) {
            boolean isBreak = kind == Kind.BREAK;
            return new Entry(task.machine(), isBreak ? "break" : task.name(), task.order(), kind,
                    isBreak ? MachineState.ANY : task.state(), people, start, end, spare);
        }
    }

    /** What an entry is. */
    public enum Kind {
        TASK,
        /** Minutes that pass by themselves after the task of the same name. */
        WAIT,
        /** Somebody's break, by the machine where he was last. */
        BREAK
    }

    public Timetable {
        overstays = List.copyOf(overstays);
        entries = List.copyOf(entries);
        Check.inRange(bound, 0, minutes, "bound");
    }

    /** Whether no shorter one exists. */
    public boolean proven() {
        return bound == minutes;
    }

    /** How much longer it may be than the shortest, in minutes. */
    public int gap() {
        return minutes - bound;
    }

    /** Minutes of all people together for which somebody stays longer than he may. */
    int overstayed() {
        return overstays.stream().mapToInt(Overstay::minutes).sum();
    }

    /** Minutes of somebody's breaks, for which nobody pays him. */
    public int resting(int person) {
        return entries.stream().filter(entry -> entry.kind() == Kind.BREAK && entry.people().contains(person))
                .mapToInt(entry -> entry.end() - entry.start()).sum();
    }

    /** Minutes from when the machine stops making ice until it may make some again; 0 when it never stops. */
    public int withoutIce(String machine) {
        List<Entry> stopped = entries.stream()
                .filter(entry -> entry.machine().equals(machine) && entry.state().stopsIce()).toList();
        int from = stopped.stream().mapToInt(Entry::start).min().orElse(0);
        return stopped.stream().mapToInt(Entry::end).max().orElse(0) - from;
    }
}
