package icequill.office.days;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/**
 * A day that somebody settled for a due visit.
 *
 * @param row in which it was settled, from 0
 * @param key of the visit: agreement, site and due day
 * @param people by name, one for each of the crew that was planned, in its order
 */
public record ChosenDay(int row, String key, LocalDate day, LocalTime at, List<String> people) {

    public ChosenDay {
        people = List.copyOf(people);
    }
}
