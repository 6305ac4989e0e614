package icequill.ledger.entries;

import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Adds and changes customers, sites, machines, visits, agreements and requests, and leaves a trail. Each refuses what would leave the book untrue. */
public final class Register {

    private final Handle handle;
    private final Entries entries;
    private final Instant now;
    private final Trail trail;

    public Register(Handle handle, Instant now, Trail trail) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.now = now;
        this.trail = trail;
    }

    public Validated<CustomerEntry> add(CustomerEntry entry) {
        Problems problems = takenOrMerged("customer", entry.id());
        problems.addAll(parentProblems(entry));
        return stored(problems, entry, Noted.of(entry, TrailEvent.ADDED), () -> new CustomerRows(handle).insert(entry));
    }

    public Validated<CustomerEntry> change(CustomerEntry entry) {
        Problems problems = missing(entries.customer(entry.id()));
        problems.addAll(parentProblems(entry));
        return stored(problems, entry, Noted.of(entry, TrailEvent.CHANGED),
                () -> new CustomerRows(handle).update(entry));
    }

    public Validated<SiteEntry> add(SiteEntry site) {
        Problems problems = takenOrMerged("site", site.id());
        problems.take(entries.customer(site.customer()));
        return stored(problems, site, Noted.of(site, TrailEvent.ADDED), () -> SiteRows.insert(handle, site));
    }

    public Validated<SiteEntry> change(SiteEntry site) {
        Problems problems = missing(entries.site(site.id()));
        problems.take(entries.customer(site.customer()));
        return stored(problems, site, Noted.of(site, TrailEvent.CHANGED), () -> SiteRows.update(handle, site));
    }

    public Validated<MachineEntry> add(MachineEntry machine) {
        Problems problems = missing(entries.site(machine.site()));
        if (entries.machine(machine.site(), machine.id()) instanceof Validated.Valid<MachineEntry>) {
            problems.add(exists("a machine at " + machine.site(), machine.id()));
        }
        return stored(problems, machine, Noted.of(machine, TrailEvent.ADDED),
                () -> MachineRows.insert(handle, machine));
    }

    public Validated<MachineEntry> change(MachineEntry machine) {
        return stored(missing(entries.machine(machine.site(), machine.id())), machine,
                Noted.of(machine, TrailEvent.CHANGED), () -> MachineRows.update(handle, machine));
    }

    /** A visit that is planned, or was done. */
    public Validated<VisitEntry> record(VisitEntry visit) {
        Problems problems = taken("a visit", "visit", visit.id());
        problems.take(entries.site(visit.site()));
        return stored(problems, visit, Noted.of(visit, TrailEvent.RECORDED),
                () -> VisitRows.insert(handle, visit, now));
    }

    /** Notes a visit anew, as long as no paper was issued for it; one that was planned may be done now, but not the other way. */
    public Validated<VisitEntry> change(VisitEntry visit) {
        Validated<VisitEntry> before = entries.visit(visit.id());
        Problems problems = missing(before);
        before.found().filter(known -> visit.isPlanned() && !known.isPlanned()).ifPresent(done -> problems.add(
                Code.NOT_ALLOWED, Place.NOWHERE, "visit \"" + visit.id() + "\" was done already",
                "a planned visit of another id"));
        problems.take(entries.site(visit.site()));
        problems.addAll(withdrawn(visit.id()));
        paperOf(visit.id()).ifPresent(number -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                "visit \"" + visit.id() + "\" was billed as " + number,
                "a credit note for it, and a visit of another id"));
        return stored(problems, visit, Noted.of(visit, TrailEvent.CHANGED), () -> VisitRows.update(handle, visit, now));
    }

    public Validated<AgreementEntry> add(AgreementEntry agreement) {
        Problems problems = taken("an agreement", "agreement", agreement.id());
        problems.addAll(sameNumber(agreement));
        problems.take(entries.site(agreement.site()));
        return stored(problems, agreement, Noted.of(agreement, TrailEvent.ADDED),
                () -> AgreementRows.insert(handle, agreement, now));
    }

    public Validated<AgreementEntry> change(AgreementEntry agreement) {
        Problems problems = new Problems();
        problems.addAll(sameNumber(agreement));
        problems.take(entries.site(agreement.site()));
        return stored(problems, agreement, Noted.of(agreement, TrailEvent.CHANGED),
                () -> AgreementRows.update(handle, agreement, now));
    }

    private List<Problem> sameNumber(AgreementEntry agreement) {
        return entries.agreement(agreement.number()).filter(other -> !other.id().equals(agreement.id()))
                .map(other -> exists("an agreement " + agreement.number() + ", which is", other.id())).stream()
                .toList();
    }

    public Validated<RequestEntry> add(RequestEntry request) {
        Problems problems = missing(entries.site(request.site()));
        return stored(problems, request, Noted.of(request, TrailEvent.ADDED),
                () -> RequestRows.insert(handle, request, now));
    }

    public Validated<RequestEntry> change(RequestEntry request) {
        Problems problems = missing(entries.site(request.site()));
        return stored(problems, request, Noted.of(request, TrailEvent.CHANGED),
                () -> RequestRows.update(handle, request, now));
    }

    /** Takes a recorded visit back. Whether an invoice of it stands is for the caller to know. */
    public Validated<Withdrawal> withdraw(String visit, String reason) {
        Problems problems = missing(entries.visit(visit));
        problems.addAll(withdrawn(visit));
        Withdrawal withdrawal = new Withdrawal(now, reason);
        return stored(problems, withdrawal, new Noted(Subject.VISIT, visit, TrailEvent.WITHDRAWN),
                () -> VisitRows.withdraw(handle, visit, reason, now));
    }

    private List<Problem> withdrawn(String visit) {
        return entries.withdrawal(visit).map(before -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                before.told("visit", visit), "a visit of another id")).stream()
                .toList();
    }

    /** Notes why a paper bears an earlier day than the one before it. */
    public void backdated(String number, String reason) {
        trail.note(Subject.PAPER, number, TrailEvent.BACKDATED,
                () -> handle.createUpdate("INSERT INTO paper_backdated (paper_id, reason)"
                        + " SELECT id, :reason FROM paper WHERE number = :number").bind("number", number)
                        .bind("reason", reason).execute());
    }

    private Optional<String> paperOf(String visit) {
        return handle.createQuery("SELECT number FROM paper WHERE visit_id = :visit OR number IN"
                + " (SELECT number FROM paper_further_visit WHERE visit_id = :visit) ORDER BY id LIMIT 1")
                .bind("visit", visit).mapTo(String.class).findOne();
    }

    /** A parent must exist, and nobody is his own parent, however many lie between. */
    private List<Problem> parentProblems(CustomerEntry entry) {
        Problems problems = new Problems();
        Set<String> above = new HashSet<>(Set.of(entry.id()));
        Optional<String> parent = entry.parent();
        while (parent.isPresent() && problems.isEmpty()) {
            String id = parent.get();
            if (!above.add(id)) {
                problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                        "customer \"" + entry.id() + "\" would be a parent of itself", "a parent that is not below it");
                return problems.list();
            }
            parent = problems.take(entries.customer(id)).flatMap(CustomerEntry::parent);
        }
        return problems.list();
    }

    private Problems taken(String what, String table, String id) {
        Problems problems = new Problems();
        if (entries.has(table, id)) {
            problems.add(exists(what, id));
        }
        return problems;
    }

    /** The same for what may have been merged, whose row stays. */
    private Problems takenOrMerged(String table, String id) {
        Problems problems = new Problems();
        entries.merged(table, id).ifPresentOrElse(problems::add,
                () -> problems.addAll(taken("a " + table, table, id).list()));
        return problems;
    }

    private static Problem exists(String what, String id) {
        return new Problem(Code.ALREADY_EXISTS, Place.NOWHERE, "the book has " + what + " \"" + id + "\" already",
                "another id, or change it");
    }

    private static Problems missing(Validated<?> found) {
        Problems problems = new Problems();
        problems.addAll(found.problems());
        return problems;
    }

    /** Changes an entry that has no problems, and leaves the trail of it. */
    private <T> Validated<T> stored(Problems problems, T entry, Noted noted, Runnable store) {
        return problems.or(() -> {
            noted.in(trail, store);
            return entry;
        });
    }
}
