package icequill.office.days;

import icequill.days.Attended;
import icequill.files.form.VisitNames;
import icequill.ledger.Reading;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The visits of the book that stand, by site and rising day. */
record AttendedVisits(Map<String, List<Attended>> bySite) {

    static AttendedVisits in(Reading open) {
        Set<String> called = open.entries().calls().keySet();
        Set<String> withdrawn = open.entries().withdrawals().keySet();
        Map<String, String> now = new HashMap<>();
        Map<String, List<Attended>> bySite = new HashMap<>();
        open.entries().visits(VisitQuestion.ALL).stream()
                .filter(entry -> !withdrawn.contains(entry.id()) && !entry.isForgotten())
                .forEach(entry -> bySite.computeIfAbsent(now.computeIfAbsent(entry.site(),
                        site -> open.entries().siteNow(site).found().map(SiteEntry::id).orElse(site)),
                        site -> new ArrayList<>()).add(attended(entry, called.contains(entry.id()))));
        return new AttendedVisits(bySite);
    }

    private static Attended attended(VisitEntry entry, boolean isAsked) {
        VisitNames names = VisitNames.of(entry.data());
        return new Attended(entry.id(), entry.began().toLocalDate(), entry.isPlanned(), isAsked,
                names.people(), Set.copyOf(names.machines()), Set.copyOf(names.tasks()));
    }

    List<Attended> at(String site) {
        return bySite.getOrDefault(site, List.of());
    }

    /** Who came to a site last. */
    Optional<String> lastPerson(String site) {
        return at(site).reversed().stream().filter(visit -> !visit.isPlanned())
                .flatMap(visit -> visit.people().stream().limit(1)).findFirst();
    }
}
