package icequill.office.days;

import java.time.LocalDate;
import java.time.LocalTime;

/**
 * A day that somebody settled for a due visit.
 *
 * @param row in which it was settled, from 0
 * @param key of the visit: agreement, site and due day
 * @param person by name
 */
public record ChosenDay(int row, String key, LocalDate day, LocalTime at, String person) {}
