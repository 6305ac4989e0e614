package icequill.party;

import icequill.problem.Check;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Days from the first to just before the end (half-open).
 *
 * @param end the first day that no longer belongs; empty when it goes on
 */
public record Period(LocalDate first, Optional<LocalDate> end) {

    public Period {
        LocalDate from = first;
        Check.that(end.map(day -> day.isAfter(from)).orElse(true),
                "a period must not be empty: " + first + " to " + end);
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && end.map(day::isBefore).orElse(true);
    }

    public boolean overlaps(Period other) {
        return end.map(other.first::isBefore).orElse(true) && other.end.map(first::isBefore).orElse(true);
    }

    /** {@code 2026-01-01 to 2027-01-01}, the end being the first day outside, or {@code from 2026-01-01}. */
    public String text() {
        return end.map(day -> first + " to " + day).orElse("from " + first);
    }
}
