package icequill.ledger.entries;

import icequill.ledger.trail.Past;
import icequill.ledger.trail.PastRow;
import icequill.ledger.trail.Subject;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Entries as they were when a paper was issued. Those of forgotten customers are not known any more. */
public record PastEntries(Past past) {

    public Optional<CustomerEntry> customer(String id) {
        return past.row(Subject.CUSTOMER, id).map(CustomerRows::past);
    }

    public Optional<SiteEntry> site(String id) {
        return past.row(Subject.SITE, id).map(row -> row.as(SiteEntry.class));
    }

    /** In the order in which their site named them. */
    public List<MachineEntry> machinesOf(String site) {
        return past.rows(Subject.MACHINE).stream().map(row -> row.as(MachineEntry.class))
                .filter(machine -> machine.site().equals(site))
                .sorted(Comparator.comparingInt(MachineEntry::position).thenComparing(MachineEntry::id)).toList();
    }

    public Optional<VisitEntry> visit(String id) {
        return past.row(Subject.VISIT, id).map(PastEntries::visit);
    }

    private static VisitEntry visit(PastRow row) {
        return row.as(VisitRows.Row.class).entry();
    }

    /** Done and planned. */
    public List<VisitEntry> visitsAt(String site) {
        return past.rows(Subject.VISIT).stream().map(PastEntries::visit).filter(visit -> visit.site().equals(site))
                .toList();
    }

    public List<AgreementEntry> agreements() {
        return past.rows(Subject.AGREEMENT).stream().map(row -> row.as(AgreementEntry.class)).toList();
    }

    public Optional<RequestEntry> request(String kind, String id) {
        return past.row(Subject.REQUEST, Subject.part(kind, id)).map(row -> row.as(RequestEntry.class));
    }

    public List<RequestEntry> requestsAt(String site) {
        return past.rows(Subject.REQUEST).stream().map(row -> row.as(RequestEntry.class))
                .filter(request -> request.site().equals(site)).toList();
    }
}
