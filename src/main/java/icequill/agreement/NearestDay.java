package icequill.agreement;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Tells to which of several days a visit belongs. */
public final class NearestDay {

    private NearestDay() {
    }

    /** What is nearest to the day of a visit; of two the first. */
    public static <T> Optional<T> of(List<T> all, Function<T, LocalDate> day, LocalDate visit) {
        return all.stream().min(
                Comparator.comparingLong(one -> Math.abs(ChronoUnit.DAYS.between(day.apply(one), visit))));
    }
}
