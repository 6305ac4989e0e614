package icequill.outlook.minutes;

import icequill.problem.Check;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * The time that the tasks of a visit took. Nobody notes the time of single tasks.
 *
 * @param people who did them, by name
 * @param machines at which they were done, each by its model
 * @param worked minutes that all of them were at work, from 1
 * @param planned minutes that a timetable for so many people has for the same, waits and walks included, from 1
 * @param attended of these the minutes at the machine, by task; at least one above 0
 */
public record VisitTime(String visit, LocalDate day, List<String> people, List<String> machines, int worked,
        int planned, Map<String, Integer> attended) {

    /** Beyond so many times as long, or as short, a time of arrival or departure is more likely wrong than the plan. */
    private static final int FAR = 3;

    public VisitTime {
        people = List.copyOf(people);
        machines = List.copyOf(machines);
        attended = Map.copyOf(attended);
        Check.inRange(worked, 1, Integer.MAX_VALUE, "worked");
        Check.inRange(planned, 1, Integer.MAX_VALUE, "planned");
        Check.that(attended.values().stream().anyMatch(minutes -> minutes > 0), "nobody is needed: " + visit);
    }

    boolean isFarOff() {
        return (long) worked * FAR < planned || worked > (long) planned * FAR;
    }

    /** How many times as long as planned it took. */
    double times() {
        return (double) worked / planned;
    }

    int atMachines() {
        return attended.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How many times as long as planned the work at the machines took, if waits and walks took what was planned. */
    double timesAtMachines() {
        return (double) (worked - (planned - atMachines())) / atMachines();
    }

    /** The part that a task has in the planned minutes at the machines. */
    double share(String task) {
        return (double) attended.getOrDefault(task, 0) / atMachines();
    }
}
