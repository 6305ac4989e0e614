package icequill.agreement;

import icequill.problem.Check;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/** The days on which a notice may be given, the first and the last among them. */
public record NoticeWindow(LocalDate first, LocalDate last) {

    public NoticeWindow {
        Check.that(!last.isBefore(first), "a window ends before it begins: " + first + ", " + last);
    }

    /** The days of both; empty when they have none in common. */
    public Optional<NoticeWindow> and(NoticeWindow other) {
        LocalDate from = first.isAfter(other.first) ? first : other.first;
        LocalDate to = last.isBefore(other.last) ? last : other.last;
        return to.isBefore(from) ? Optional.empty() : Optional.of(new NoticeWindow(from, to));
    }

    /** As far as it is not after a day; empty when all of it is. */
    Optional<NoticeWindow> until(LocalDate day) {
        return and(new NoticeWindow(LocalDate.MIN, day));
    }

    public boolean contains(LocalDate day) {
        return !day.isBefore(first) && !day.isAfter(last);
    }

    public long days() {
        return ChronoUnit.DAYS.between(first, last) + 1;
    }
}
