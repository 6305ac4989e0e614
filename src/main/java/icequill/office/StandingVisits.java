package icequill.office;

import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The visits on which the shop looks back. */
final class StandingVisits {

    /** That there are none. */
    static final Problem NONE = new Problem(Code.MISSING, Place.NOWHERE, "the book has no visits to look back on",
            "visits are recorded by: icequill visit add FILE");

    private StandingVisits() {
    }

    /** Those that were done and not withdrawn, by site and day; without those of customers who were forgotten. */
    static Validated<Map<String, List<VisitEntry>>> bySite(Reading open) {
        Map<String, List<VisitEntry>> visits = new LinkedHashMap<>();
        List<String> forgotten = open.entries().customers().stream()
                .filter(customer -> customer.forgotten().isPresent()).map(CustomerEntry::id)
                .flatMap(customer -> open.entries().sitesOf(customer).stream()).map(SiteEntry::id).toList();
        open.entries().visits().stream().filter(visit -> !forgotten.contains(visit.site()))
                .filter(visit -> open.entries().withdrawal(visit.id()).isEmpty())
                .forEach(visit -> visits.computeIfAbsent(visit.site(), site -> new ArrayList<>()).add(visit));
        return Validated.valid(visits);
    }
}
