package icequill.days;

import icequill.explain.Phrase;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

/**
 * A visit with its day.
 *
 * @param begin minutes since midnight, the same for all who go
 * @param going one for each of the crew that was planned
 * @param reasons why this day, once that is known
 */
public record Placed(Wanted visit, LocalDate day, int begin, List<Going> going, List<Phrase> reasons) {

    private static final int HOUR = 60;

    public Placed {
        going = List.copyOf(going);
        reasons = List.copyOf(reasons);
    }

    public LocalTime from() {
        return time(begin);
    }

    /** When the last of them leaves. */
    public LocalTime until() {
        return time(begin + visit.minutes());
    }

    Placed because(List<Phrase> found) {
        return new Placed(visit, day, begin, going, found);
    }

    private static LocalTime time(int minutes) {
        return LocalTime.of(minutes / HOUR, minutes % HOUR);
    }
}
