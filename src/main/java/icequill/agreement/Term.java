package icequill.agreement;

import icequill.problem.Check;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * The time an agreement runs for.
 *
 * @param start its first day
 * @param months from 1 to 1200, those counted that an agreement goes on for
 */
public record Term(LocalDate start, int months) {

    static final int MOST_MONTHS = 1200;

    public Term {
        Check.inRange(months, 1, MOST_MONTHS, "months of a term");
    }

    /** The first day after the term, on which a renewal would begin. */
    public LocalDate renewal() {
        return start.plusMonths(months);
    }

    public LocalDate lastDay() {
        return renewal().minusDays(1);
    }

    /** Days of the term, the first and the last counted. */
    public long days() {
        return ChronoUnit.DAYS.between(start, renewal());
    }

    /** Days from one of its days to its last, both counted. */
    public long daysFrom(LocalDate day) {
        Check.that(contains(day), day + " is not within the term from " + start + " to " + lastDay());
        return ChronoUnit.DAYS.between(day, renewal());
    }

    /** The last day of the month of the term, counted from its start, that a day of the term is in. */
    public LocalDate lastOfMonth(LocalDate day) {
        Check.that(contains(day), day + " is not within the term from " + start + " to " + lastDay());
        int begun = 1;
        while (!start.plusMonths(begun).isAfter(day)) {
            begun++;
        }
        return start.plusMonths(begun).minusDays(1);
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(start) && day.isBefore(renewal());
    }
}
