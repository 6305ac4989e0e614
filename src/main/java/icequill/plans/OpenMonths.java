package icequill.plans;

import icequill.forecast.stops.Pace;
import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.Set;

/**
 * The months of a year in which the machines of a site run. Out of season they stand idle: they neither fail nor get dirty.
 *
 * @param open empty for the whole year
 */
public record OpenMonths(Set<Month> open) {

    private static final int YEAR = 12;

    /** Months of a year that machines run. */
    public int aYear() {
        return open.isEmpty() ? YEAR : open.size();
    }

    public boolean isWholeYear() {
        return aYear() == YEAR;
    }

    /** Days of a year that machines run; February has 28. */
    public int days() {
        return Arrays.stream(Month.values()).filter(this::runsIn).mapToInt(month -> month.length(false)).sum();
    }

    /** Those months count, and no other. */
    public Pace pace() {
        return new Pace(Arrays.stream(Month.values()).map(month -> runsIn(month) ? 1.0 : 0).toList());
    }

    /** The day itself, or the first day after it on which machines run. */
    LocalDate opening(LocalDate day) {
        LocalDate open = day;
        while (!runsIn(open.getMonth())) {
            open = open.withDayOfMonth(1).plusMonths(1);
        }
        return open;
    }

    private boolean runsIn(Month month) {
        return open.isEmpty() || open.contains(month);
    }
}
