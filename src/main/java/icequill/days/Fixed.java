package icequill.days;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where a person is already expected, which nothing moves.
 *
 * @param name of the visit or call
 * @param from minutes since midnight
 * @param until minutes since midnight, after {@code from}
 */
public record Fixed(String name, String person, LocalDate day, int from, int until, Road road) {

    boolean isFor(Person someone, LocalDate date) {
        return day.equals(date) && person.equals(someone.name());
    }

    /** Whether it keeps somebody from being elsewhere from one minute of a day to another. */
    public boolean meets(String someone, LocalDate date, int begin, int end) {
        return day.equals(date) && person.equals(someone) && from < end && begin < until;
    }

    Stop stop() {
        return new Stop(name, road, from, until, until - from, true, Optional.empty());
    }
}
