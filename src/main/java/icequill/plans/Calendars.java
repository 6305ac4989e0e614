package icequill.plans;

import icequill.agreement.PlannedVisit;
import icequill.agreement.Scope;
import icequill.forecast.stops.CleaningSchedule;
import icequill.forecast.stops.Pace;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The real days of visits as months since the beginning, by which a forecast counts.
 *
 * @param start of the first year
 */
public record Calendars(OpenMonths season, LocalDate start) {

    private static final int YEAR = 12;
    /** Years that the longest look ahead has. */
    private static final int MOST_YEARS = 10;

    /** The care by the visits of a plan's first year whose scope is so, year after year. */
    CleaningSchedule of(PricedPlan plan, Predicate<Scope> so, double restores) {
        List<Double> at = plan.calendar().firstYear().stream().filter(visit -> so.test(visit.slot().scope()))
                .map(this::month).filter(month -> month < YEAR).distinct().toList();
        return at.isEmpty() ? CleaningSchedule.NEVER : new CleaningSchedule(at, YEAR, restores);
    }

    private double month(PlannedVisit visit) {
        return season.isWholeYear() ? visit.begun() : Pace.position(start, visit.date());
    }

    /** The care by a cleaning every so many months; what falls due out of season is done when the site opens. */
    public CleaningSchedule every(int months, double restores) {
        return season.isWholeYear()
                ? new CleaningSchedule(months, restores)
                : new CleaningSchedule(due(months), (double) YEAR * MOST_YEARS, restores);
    }

    /** How many cleanings every so many months fall into each year. */
    public List<Integer> inYears(int months) {
        List<Double> due = due(months);
        return IntStream.range(0, MOST_YEARS).mapToObj(year -> (int) due.stream()
                .filter(month -> month >= year * YEAR && month < (year + 1) * YEAR).count()).toList();
    }

    private List<Double> due(int months) {
        return IntStream.iterate(0, month -> month < YEAR * MOST_YEARS, month -> month + months)
                .mapToObj(month -> season.isWholeYear()
                        ? Double.valueOf(month)
                        : Double.valueOf(Pace.position(start, season.opening(start.plusMonths(month)))))
                .distinct().filter(month -> month < YEAR * MOST_YEARS).toList();
    }
}
