package icequill.ledger.entries;

import icequill.ledger.trail.Subject;
import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Makes one entry of two that turned out to be one, and leaves a trail. */
public final class Merging {

    private final Handle handle;
    private final Entries entries;
    private final Instant now;
    private final Trail trail;

    public Merging(Handle handle, Instant now, Trail trail) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.now = now;
        this.trail = trail;
    }

    /**
     * Makes one customer of two: sites, accounts below and payments of the first go to the second. Papers stay as they were issued.
     *
     * @param from whose row stays for his papers, and who is not worked on any more
     * @param into as he is to be
     * @param account what is known of both accounts, as it is to stand in the survivor's
     */
    public Validated<CustomerEntry> customers(String from, CustomerEntry into, AccountEntry account, LocalDate day) {
        Problems problems = new Problems();
        Optional<CustomerEntry> first = problems.take(entries.customer(from));
        problems.take(entries.customer(into.id()));
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
            new PaymentRows(handle).of(from).forEach(payment -> Noted.of(payment, TrailEvent.MERGED).in(trail,
                    () -> handle.execute("UPDATE payment SET customer_id = ? WHERE id = ?", into.id(), payment.id())));
            AccountRows.find(handle, from).ifPresent(known -> moved(known, account));
            handle.createQuery("SELECT id FROM customer WHERE parent_id = :from ORDER BY id").bind("from", from)
                    .mapTo(String.class).list().forEach(below -> trail.note(Subject.CUSTOMER, below, TrailEvent.MERGED,
                            () -> handle.execute("UPDATE customer SET parent_id = ? WHERE id = ?", into.id(), below)));
        });
    }

    /** By the trail, what is known of one account goes, and comes to the other. */
    private void moved(AccountEntry known, AccountEntry account) {
        Noted.of(known, TrailEvent.MERGED).in(trail, () -> Noted.of(account, TrailEvent.MERGED).in(trail, () -> {
            handle.execute("DELETE FROM account WHERE customer_id = ?", known.customer());
            AccountRows.store(handle, account, now);
        }));
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
     * Makes one site of two of the same customer: machines, visits, agreements, requests and what happened to them go from the first to the second. Papers stay as they were issued,
     * and so does what was recorded of visits.
     *
     * @param from whose row stays for its papers, and which is not worked on any more
     * @param into as it is to be
     */
    public Validated<SiteEntry> sites(String from, SiteEntry into, LocalDate day) {
        Problems problems = new Problems();
        Optional<SiteEntry> known = problems.take(entries.site(from));
        problems.take(entries.site(into.id()));
        known.filter(first -> !first.customer().equals(into.customer()))
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
            FormDrafts.move(handle, from, into.id());
            entries.requestsAt(from).forEach(request -> trail.note(Subject.REQUEST,
                    Subject.part(request.kind(), request.id()), TrailEvent.MERGED,
                    () -> handle.execute("UPDATE request SET site_id = ? WHERE kind = ? AND id = ?", into.id(),
                            request.kind(), request.id())));
            entries.stepsAt(from).forEach(step -> Noted.of(step, TrailEvent.MERGED).in(trail,
                    () -> new LifeRows(handle).move(step, into.id())));
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

    private <T> Validated<T> stored(Problems problems, T entry, Noted noted, Runnable store) {
        return problems.or(() -> {
            noted.in(trail, store);
            return entry;
        });
    }
}
