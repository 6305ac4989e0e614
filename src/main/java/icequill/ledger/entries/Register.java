package icequill.ledger.entries;

import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.party.Address;
import icequill.party.Customer;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Adds and changes customers, sites, machines, visits, agreements and requests, and leaves a trail. Each refuses what would leave the book untrue. */
public final class Register {

    /** What stands in the place of what was forgotten. */
    private static final String BLANK = "";

    private final Handle handle;
    private final Entries entries;
    private final Instant now;
    private final Trail trail;

    /** What is to be noted of a change. */
    private record Noted(Subject subject, String entry, TrailEvent event) {

        static Noted of(CustomerEntry customer, TrailEvent event) {
            return new Noted(Subject.CUSTOMER, customer.id(), event);
        }

        static Noted of(SiteEntry site, TrailEvent event) {
            return new Noted(Subject.SITE, site.id(), event);
        }

        static Noted of(MachineEntry machine, TrailEvent event) {
            return new Noted(Subject.MACHINE, Subject.part(machine.site(), machine.id()), event);
        }

        static Noted of(VisitEntry visit, TrailEvent event) {
            return new Noted(Subject.VISIT, visit.id(), event);
        }

        static Noted of(AgreementEntry agreement, TrailEvent event) {
            return new Noted(Subject.AGREEMENT, agreement.id(), event);
        }

        static Noted of(RequestEntry request, TrailEvent event) {
            return new Noted(Subject.REQUEST, Subject.part(request.kind(), request.id()), event);
        }
    }

    public Register(Handle handle, Instant now, Trail trail) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.now = now;
        this.trail = trail;
    }

    public Checked<CustomerEntry> add(CustomerEntry entry) {
        Problems problems = taken("customer", entry.id());
        problems.addAll(parentProblems(entry));
        return stored(problems, entry, Noted.of(entry, TrailEvent.ADDED), () -> new CustomerRows(handle).insert(entry));
    }

    public Checked<CustomerEntry> change(CustomerEntry entry) {
        Problems problems = missing(entries.customer(entry.id()));
        problems.addAll(parentProblems(entry));
        return stored(problems, entry, Noted.of(entry, TrailEvent.CHANGED),
                () -> new CustomerRows(handle).update(entry));
    }

    public Checked<SiteEntry> add(SiteEntry site) {
        Problems problems = taken("site", site.id());
        problems.take(entries.customer(site.customer()));
        return stored(problems, site, Noted.of(site, TrailEvent.ADDED), () -> SiteRows.insert(handle, site));
    }

    public Checked<SiteEntry> change(SiteEntry site) {
        Problems problems = missing(entries.site(site.id()));
        problems.take(entries.customer(site.customer()));
        return stored(problems, site, Noted.of(site, TrailEvent.CHANGED), () -> SiteRows.update(handle, site));
    }

    public Checked<MachineEntry> add(MachineEntry machine) {
        Problems problems = missing(entries.site(machine.site()));
        if (entries.machine(machine.site(), machine.id()) instanceof Checked.Sound<MachineEntry>) {
            problems.add(exists("machine at " + machine.site(), machine.id()));
        }
        return stored(problems, machine, Noted.of(machine, TrailEvent.ADDED),
                () -> MachineRows.insert(handle, machine));
    }

    public Checked<MachineEntry> change(MachineEntry machine) {
        return stored(missing(entries.machine(machine.site(), machine.id())), machine,
                Noted.of(machine, TrailEvent.CHANGED), () -> MachineRows.update(handle, machine));
    }

    /** A visit that is planned, or was done. */
    public Checked<VisitEntry> record(VisitEntry visit) {
        Problems problems = taken("visit", visit.id());
        problems.take(entries.site(visit.site()));
        return stored(problems, visit, Noted.of(visit, TrailEvent.RECORDED),
                () -> VisitRows.insert(handle, visit, now));
    }

    /** Notes a visit anew, as long as no paper was issued for it; one that was planned may be done now, but not the other way. */
    public Checked<VisitEntry> change(VisitEntry visit) {
        Checked<VisitEntry> before = entries.visit(visit.id());
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

    public Checked<AgreementEntry> add(AgreementEntry agreement) {
        Problems problems = taken("agreement", agreement.id());
        problems.addAll(sameNumber(agreement));
        problems.take(entries.site(agreement.site()));
        return stored(problems, agreement, Noted.of(agreement, TrailEvent.ADDED),
                () -> AgreementRows.insert(handle, agreement, now));
    }

    public Checked<AgreementEntry> change(AgreementEntry agreement) {
        Problems problems = new Problems();
        problems.addAll(sameNumber(agreement));
        problems.take(entries.site(agreement.site()));
        return stored(problems, agreement, Noted.of(agreement, TrailEvent.CHANGED),
                () -> AgreementRows.update(handle, agreement, now));
    }

    private List<Problem> sameNumber(AgreementEntry agreement) {
        return entries.agreement(agreement.number()).filter(other -> !other.id().equals(agreement.id()))
                .map(other -> exists("agreement " + agreement.number() + ", which is", other.id())).stream().toList();
    }

    public Checked<RequestEntry> add(RequestEntry request) {
        Problems problems = missing(entries.site(request.site()));
        return stored(problems, request, Noted.of(request, TrailEvent.ADDED),
                () -> RequestRows.insert(handle, request, now));
    }

    public Checked<RequestEntry> change(RequestEntry request) {
        Problems problems = missing(entries.site(request.site()));
        return stored(problems, request, Noted.of(request, TrailEvent.CHANGED),
                () -> RequestRows.update(handle, request, now));
    }

    /** Takes a recorded visit back. Whether an invoice of it stands is for the caller to know. */
    public Checked<Withdrawal> withdraw(String visit, String reason) {
        Problems problems = missing(entries.visit(visit));
        problems.addAll(withdrawn(visit));
        Withdrawal withdrawal = new Withdrawal(now, reason);
        return stored(problems, withdrawal, new Noted(Subject.VISIT, visit, TrailEvent.WITHDRAWN),
                () -> VisitRows.withdraw(handle, visit, reason, now));
    }

    private List<Problem> withdrawn(String visit) {
        return entries.withdrawal(visit).map(before -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                before.told(visit), "a visit of another id")).stream()
                .toList();
    }

    /** Notes why a paper bears an earlier day than the one before it. */
    public void backdated(String number, String reason) {
        trail.note(Subject.PAPER, number, TrailEvent.BACKDATED,
                () -> handle.createUpdate("INSERT INTO paper_backdated (paper_id, reason)"
                        + " SELECT id, :reason FROM paper WHERE number = :number").bind("number", number)
                        .bind("reason", reason).execute());
    }

    /**
     * Blanks what is personal about a customer: name, bill-to, numbers and certificates, and the names, addresses and notes of its
     * sites, machines, visits, agreements and requests, why visits were withdrawn, and what the trail says of all of it. Papers that were issued stay as they
     * are, as long as the law and the shop keep them.
     *
     * @param day on which it is done
     */
    public Checked<CustomerEntry> forget(String id, LocalDate day) {
        return entries.customer(id).map(known -> {
            CustomerEntry blank = new CustomerEntry(id,
                    Customer.named(BLANK),
                    known.parent(), Optional.of(day));
            List<CustomerEntry> merged = entries.mergedInto(id);
            Stream.concat(Stream.of(blank), merged.stream().map(other -> new CustomerEntry(other.id(),
                    Customer.named(BLANK), other.parent(), Optional.of(day)))).forEach(
                            gone -> forgotten(Noted.of(gone, TrailEvent.FORGOTTEN),
                                    () -> new CustomerRows(handle).update(gone)));
            SiteRows.ofCustomer(handle, id).forEach(this::forget);
            trail.forget(id);
            merged.forEach(other -> trail.forget(other.id()));
            return blank;
        });
    }

    /**
     * Makes one customer of two: sites and accounts below the first go to the second. Papers stay as they were issued.
     *
     * @param from whose row stays for his papers, and who is not worked on any more
     * @param into as he is to be
     */
    public Checked<CustomerEntry> merge(String from, CustomerEntry into, LocalDate day) {
        Problems problems = missing(entries.customer(from));
        problems.addAll(missing(entries.customer(into.id())).list());
        Optional<CustomerEntry> first = entries.customer(from).found();
        CustomerEntry survivor = new CustomerEntry(into.id(), into.customer(),
                into.parent().filter(from::equals).isPresent() ? first.flatMap(CustomerEntry::parent) : into.parent(),
                into.forgotten());
        Stream.concat(first.stream(), Stream.of(into)).filter(one -> one.forgotten().isPresent())
                .forEach(one -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                        "customer \"" + one.id() + "\" was forgotten on " + one.forgotten().get(), "another id"));
        if (isBelow(survivor, from)) {
            problems.add(Code.NOT_ALLOWED, Place.NOWHERE, "customer \"" + into.id()
                    + "\" belongs to an account that belongs to \"" + from + "\"",
                    "that account first, or another parent");
        }
        return stored(problems, survivor, Noted.of(survivor, TrailEvent.MERGED), () -> {
            new CustomerRows(handle).update(survivor);
            merged(MergeRows.ofCustomers(handle), Subject.CUSTOMER, from, into.id(), day);
            SiteRows.ofCustomer(handle, from).forEach(site -> trail.note(Subject.SITE, site.id(), TrailEvent.MERGED,
                    () -> handle.execute("UPDATE site SET customer_id = ? WHERE id = ?", into.id(), site.id())));
            handle.createQuery("SELECT id FROM customer WHERE parent_id = :from ORDER BY id").bind("from", from)
                    .mapTo(String.class).list().forEach(below -> trail.note(Subject.CUSTOMER, below, TrailEvent.MERGED,
                            () -> handle.execute("UPDATE customer SET parent_id = ? WHERE id = ?", into.id(), below)));
        });
    }

    /** That one is no more, and whatever was merged into it before goes along. */
    private void merged(MergeRows rows, Subject subject, String from, String into, LocalDate day) {
        rows.of(from).forEach(
                other -> trail.note(subject, other, TrailEvent.MERGED, () -> rows.redirect(other, into)));
        trail.note(subject, from, TrailEvent.MERGED, () -> rows.insert(from, into, day));
    }

    private boolean isBelow(CustomerEntry entry, String account) {
        Optional<String> parent = entry.parent();
        Set<String> seen = new HashSet<>();
        while (parent.filter(seen::add).isPresent()) {
            if (parent.get().equals(account)) {
                return true;
            }
            parent = entries.customer(parent.get()).found().flatMap(CustomerEntry::parent);
        }
        return false;
    }

    /**
     * Makes one site of two of the same customer: machines, visits, agreements and requests of the first go to the second. Papers stay as they were issued,
     * and so does what was recorded of visits.
     *
     * @param from whose row stays for its papers, and which is not worked on any more
     * @param into as it is to be
     */
    public Checked<SiteEntry> merge(String from, SiteEntry into, LocalDate day) {
        Problems problems = missing(entries.site(from));
        problems.addAll(missing(entries.site(into.id())).list());
        entries.site(from).found().filter(first -> !first.customer().equals(into.customer()))
                .ifPresent(first -> problems.add(Code.NOT_ALLOWED, Place.NOWHERE,
                        "site \"" + from + "\" belongs to customer \"" + first.customer() + "\", and \"" + into.id()
                                + "\" to \"" + into.customer() + "\"",
                        "first: icequill customer merge, or icequill site change --customer"));
        List<String> there = entries.machinesOf(into.id()).stream().map(MachineEntry::id).toList();
        entries.machinesOf(from).stream().map(MachineEntry::id).filter(there::contains)
                .forEach(machine -> problems.add(Code.DUPLICATE_NAME, Place.NOWHERE,
                        "both sites have a machine \"" + machine + "\"", "machines with ids of their own"));
        return stored(problems, into, Noted.of(into, TrailEvent.MERGED), () -> {
            SiteRows.update(handle, into);
            entries.machinesOf(from).forEach(machine -> move(machine, into.id()));
            entries.visitsAt(from).forEach(visit -> trail.note(Subject.VISIT, visit.id(), TrailEvent.MERGED,
                    () -> handle.execute("UPDATE visit SET site_id = ? WHERE id = ?", into.id(), visit.id())));
            entries.agreementsAt(from).forEach(agreement -> trail.note(Subject.AGREEMENT, agreement.id(),
                    TrailEvent.MERGED, () -> handle.execute("UPDATE agreement SET site_id = ? WHERE id = ?", into.id(),
                            agreement.id())));
            entries.requestsAt(from).forEach(request -> trail.note(Subject.REQUEST,
                    Subject.part(request.kind(), request.id()), TrailEvent.MERGED,
                    () -> handle.execute("UPDATE request SET site_id = ? WHERE kind = ? AND id = ?", into.id(),
                            request.kind(), request.id())));
            merged(MergeRows.ofSites(handle), Subject.SITE, from, into.id(), day);
        });
    }

    /** By the trail, the machine goes at one site and comes at the other. */
    private void move(MachineEntry machine, String site) {
        trail.note(Subject.MACHINE, Subject.part(machine.site(), machine.id()), TrailEvent.MERGED,
                () -> trail.begin(Subject.MACHINE, Subject.part(site, machine.id()), TrailEvent.MERGED,
                        () -> handle.execute("UPDATE machine SET site_id = ? WHERE site_id = ? AND id = ?", site,
                                machine.site(), machine.id())));
    }

    private void forget(SiteEntry site) {
        Address address = new Address(List.of(), BLANK, BLANK, BLANK, site.address().country());
        SiteEntry blank = new SiteEntry(site.id(), site.customer(), BLANK, Optional.empty(), address, Optional.empty(),
                BLANK);
        forgotten(Noted.of(blank, TrailEvent.FORGOTTEN), () -> SiteRows.update(handle, blank));
        entries.machinesOf(site.id()).stream().map(machine -> new MachineEntry(machine.site(), machine.id(),
                machine.model(), machine.serial(), machine.installed(), machine.position(), BLANK)).forEach(
                        machine -> forgotten(Noted.of(machine, TrailEvent.FORGOTTEN),
                                () -> MachineRows.update(handle, machine)));
        entries.visitsAt(site.id()).stream().map(visit -> new VisitEntry(visit.id(), visit.site(), visit.began(),
                visit.ended(), Optional.empty(), visit.isPlanned(), BLANK)).forEach(
                        visit -> forgotten(Noted.of(visit, TrailEvent.FORGOTTEN), () -> {
                            VisitRows.update(handle, visit, now);
                            VisitRows.forgetReason(handle, visit.id());
                        }));
        entries.agreementsAt(site.id()).stream()
                .map(agreement -> new AgreementEntry(agreement.id(), agreement.number(), agreement.site(), BLANK))
                .forEach(agreement -> forgotten(Noted.of(agreement, TrailEvent.FORGOTTEN),
                        () -> AgreementRows.update(handle, agreement, now)));
        entries.requestsAt(site.id()).stream()
                .map(request -> new RequestEntry(request.kind(), request.id(), request.site(), BLANK))
                .forEach(request -> forgotten(Noted.of(request, TrailEvent.FORGOTTEN),
                        () -> RequestRows.update(handle, request, now)));
    }

    private void forgotten(Noted noted, Runnable blank) {
        trail.note(noted.subject(), noted.entry(), noted.event(), blank);
    }

    private Optional<String> paperOf(String visit) {
        return handle.createQuery("SELECT number FROM paper WHERE visit_id = :visit ORDER BY id LIMIT 1")
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

    private Problems taken(String table, String id) {
        Problems problems = new Problems();
        if (entries.has(table, id)) {
            problems.add(table.equals("visit")
                    ? exists(table, id)
                    : entries.merged(table, id).orElseGet(() -> exists(table, id)));
        }
        return problems;
    }

    private static Problem exists(String kind, String id) {
        return new Problem(Code.ALREADY_EXISTS, Place.NOWHERE, "the book has a " + kind + " \"" + id + "\" already",
                "another id, or change it");
    }

    private static Problems missing(Checked<?> found) {
        Problems problems = new Problems();
        problems.addAll(found.problems());
        return problems;
    }

    /** Changes an entry that has no problems, and leaves the trail of it; whatever changes entries goes through here. */
    private <T> Checked<T> stored(Problems problems, T entry, Noted noted, Runnable store) {
        return problems.or(() -> {
            trail.note(noted.subject(), noted.entry(), noted.event(), store);
            return entry;
        });
    }
}
