package icequill.answer.forecast;

import icequill.forecast.Cause;
import icequill.forecast.inputs.SiteVisits;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the shop's own visits say of a site.
 *
 * @param since the day of the first visit
 * @param isWholeYear whether the book is old enough to have all calls of the last twelve months
 */
public record RecordedCare(int visits, LocalDate since, boolean isWholeYear, Calls callsOfLastYear,
        List<Machine> machines) {

    /** Calls by what they were for; unknown where nobody wrote it down and the work does not show it. */
    public record Calls(int condenser, int water, int other, int unknown) {}

    /** A machine, and the work that took dirt off it last; missing where none is on record. */
    public record Machine(String machine, Optional<Work> cleaned, Optional<Work> brushed) {}

    /**
     * Work of a visit.
     *
     * @param tasks and {@code people}: what was done, and who was there
     */
    public record Work(LocalDate day, String visit, List<String> tasks, List<String> people) {
        private static Work of(SiteVisits.Cleaned cleaned) {
            return new Work(cleaned.day(), cleaned.visit(), cleaned.tasks(), cleaned.people());
        }
    }

    static RecordedCare of(SiteVisits book) {
        SiteVisits.Calls calls = book.calls();
        return new RecordedCare(book.visits(), book.since(), calls.isWhole(),
                new Calls(calls.of(Cause.CONDENSER), calls.of(Cause.WATER), calls.of(Cause.RANDOM), calls.unknown()),
                book.machines().stream().map(care -> new Machine(care.machine(),
                        care.last(Cause.WATER).map(Work::of), care.last(Cause.CONDENSER).map(Work::of))).toList());
    }
}
