package icequill.life.repair;

import icequill.work.Finding;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A repair that a visit recommended.
 *
 * @param visit by id
 * @param machine by id
 * @param text as the technician wrote it
 * @param isWanted whether the customer said yes to it there and then
 */
public record RecommendedRepair(String visit, LocalDate day, String machine, String text, boolean isWanted) {

    /**
     * Those that no later visit says it did, or found not to be needed any more, the oldest first. What was recommended again in the same words
     * counts once, as it was said last.
     *
     * @param done visits to one site
     */
    public static List<RecommendedRepair> open(List<Visit> done) {
        List<RecommendedRepair> open = new ArrayList<>();
        done.stream().sorted(Comparator.comparing(Visit::began)).forEach(visit -> {
            Set<Finding.Settled> settled = visit.findings().stream().map(Finding::settled).flatMap(List::stream)
                    .collect(Collectors.toSet());
            open.removeIf(before -> settled.stream().anyMatch(before::isSettledBy));
            visit.findings().forEach(finding -> finding.recommendations().forEach(advice -> {
                open.removeIf(before -> before.machine().equals(finding.machine())
                        && before.text().equalsIgnoreCase(advice.text()));
                open.add(new RecommendedRepair(visit.id(), visit.day(), finding.machine(), advice.text(),
                        advice.accepted()));
            }));
        });
        return List.copyOf(open);
    }

    /** Whether it is what a later visit names. */
    public boolean isSettledBy(Finding.Settled settled) {
        return isNamed(settled.visit(), settled.recommended());
    }

    /** Whether it is called by its visit and its words. */
    public boolean isNamed(String byVisit, String recommended) {
        return visit.equals(byVisit) && text.equals(recommended);
    }
}
