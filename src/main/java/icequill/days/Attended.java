package icequill.days;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Set;

/**
 * A visit of the book that stands.
 *
 * @param visit by id
 * @param isPlanned whether it is still to come
 * @param isAsked whether somebody called for it
 * @param people who came or come, by name
 * @param machines by id
 * @param tasks by id
 */
public record Attended(String visit, LocalDate day, boolean isPlanned, boolean isAsked, List<String> people,
        Set<String> machines, Set<String> tasks) {

    public Attended {
        people = List.copyOf(people);
        machines = Set.copyOf(machines);
        tasks = Set.copyOf(tasks);
    }

    /** Whether any of some tasks was done at any of some machines. */
    boolean does(Set<String> some, Set<String> at) {
        return !Collections.disjoint(tasks, some) && !Collections.disjoint(machines, at);
    }
}
