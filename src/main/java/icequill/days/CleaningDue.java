package icequill.days;

import icequill.agreement.Scope;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * When the next full cleaning of a site that no agreement is for is due.
 *
 * @param last the day of the last full cleaning on record; where there is none, it is counted from the first visit
 * @param planned a full cleaning that stands in the book as still to come
 */
public record CleaningDue(LocalDate due, Optional<LocalDate> last, Optional<Attended> planned) {

    /**
     * By what the book has of a site.
     *
     * @param said the day that the last visit named
     * @param months from one full cleaning to the next
     * @param attended at the site, by rising day
     * @param scopes of visits, as the shop's plans have them
     * @return empty where nobody was ever there
     */
    public static Optional<CleaningDue> of(Optional<LocalDate> said, int months, List<Attended> attended,
            List<Scope> scopes) {
        Set<String> tasks = FullCleaning.tasks(scopes);
        List<Attended> cleanings = attended.stream().filter(visit -> visit.tasks().stream().anyMatch(tasks::contains))
                .toList();
        Optional<LocalDate> last = cleanings.stream().filter(visit -> !visit.isPlanned()).map(Attended::day)
                .max(Comparator.naturalOrder());
        Optional<LocalDate> first = attended.stream().filter(visit -> !visit.isPlanned()).map(Attended::day)
                .min(Comparator.naturalOrder());
        return said.filter(day -> last.filter(day::isBefore).isEmpty())
                .or(() -> last.or(() -> first).map(day -> day.plusMonths(months)))
                .map(due -> new CleaningDue(due, last, cleanings.stream().filter(Attended::isPlanned)
                        .filter(visit -> last.filter(day -> !visit.day().isAfter(day)).isEmpty())
                        .min(Comparator.comparing(Attended::day).thenComparing(Attended::visit))));
    }
}
