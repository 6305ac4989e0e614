package icequill.ledger.entries;

import icequill.ledger.trail.Trail;
import icequill.ledger.trail.TrailEvent;
import icequill.party.Address;
import icequill.party.Customer;
import icequill.problem.Validated;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/** Takes out of the book what is personal about a customer who is to be forgotten. */
public final class Erasure {

    /** What stands in the place of what was forgotten. */
    private static final String BLANK = "";

    private final Handle handle;
    private final Entries entries;
    private final Instant now;
    private final Trail trail;

    public Erasure(Handle handle, Instant now, Trail trail) {
        this.handle = handle;
        this.entries = new Entries(handle);
        this.now = now;
        this.trail = trail;
    }

    /**
     * Blanks what is personal about a customer: name, bill-to, numbers and certificates, and the names, addresses and notes of its
     * sites, machines, visits, agreements and requests, names and words of people in what happened to quotes, agreements, calls and mails, what went along with these, what payers wrote on payments, what is known of the account besides, why visits and
     * payments were withdrawn, what somebody began to type of them, and what the trail says of all of it. Papers that
     * were issued stay as they are, as long as the law and the shop keep them.
     *
     * @param day on which it is done
     */
    public Validated<CustomerEntry> forget(String id, LocalDate day) {
        return entries.customer(id).map(known -> {
            CustomerEntry blank = blank(known, day);
            List<CustomerEntry> merged = entries.mergedInto(id);
            Stream.concat(Stream.of(blank), merged.stream().map(other -> blank(other, day)))
                    .forEach(gone -> Noted.of(gone, TrailEvent.FORGOTTEN).in(trail,
                            () -> new CustomerRows(handle).update(gone)));
            SiteRows.ofCustomer(handle, id).forEach(this::forget);
            Stream.concat(Stream.of(id), merged.stream().map(CustomerEntry::id)).forEach(this::forgetMails);
            forgetAccount(id);
            trail.forget(id);
            merged.forEach(other -> trail.forget(other.id()));
            return blank;
        });
    }

    private static CustomerEntry blank(CustomerEntry known, LocalDate day) {
        return new CustomerEntry(known.id(), Customer.named(BLANK), known.parent(), Optional.of(day));
    }

    private void forgetAccount(String customer) {
        PaymentRows payments = new PaymentRows(handle);
        payments.of(customer).forEach(payment -> Noted.of(payment, TrailEvent.FORGOTTEN).in(trail,
                () -> payments.forget(payment.id())));
        AccountRows.find(handle, customer).map(known -> new AccountEntry(customer, BLANK)).ifPresent(
                blank -> Noted.of(blank, TrailEvent.FORGOTTEN).in(trail,
                        () -> AccountRows.store(handle, blank, now)));
    }

    private void forgetMails(String customer) {
        new LifeRows(handle).ofCustomer(customer).forEach(this::forget);
        MailFiles.forget(handle, customer);
    }

    private void forget(LifeStep step) {
        Noted.of(step, TrailEvent.FORGOTTEN).in(trail, () -> new LifeRows(handle).forget(step));
    }

    private void forget(SiteEntry site) {
        Address address = new Address(List.of(), BLANK, BLANK, BLANK, site.address().country());
        SiteEntry blank = new SiteEntry(site.id(), site.customer(), BLANK, Optional.empty(), address, Optional.empty(),
                BLANK);
        Noted.of(blank, TrailEvent.FORGOTTEN).in(trail, () -> SiteRows.update(handle, blank));
        FormDrafts.forget(handle, site.id());
        entries.machinesOf(site.id()).stream().map(machine -> new MachineEntry(machine.site(), machine.id(),
                machine.model(), machine.serial(), machine.installed(), machine.position(), BLANK)).forEach(
                        machine -> Noted.of(machine, TrailEvent.FORGOTTEN).in(trail,
                                () -> MachineRows.update(handle, machine)));
        entries.visitsAt(site.id()).stream().map(visit -> new VisitEntry(visit.id(), visit.site(), visit.began(),
                visit.ended(), Optional.empty(), visit.isPlanned(), BLANK)).forEach(
                        visit -> Noted.of(visit, TrailEvent.FORGOTTEN).in(trail, () -> {
                            VisitRows.update(handle, visit, now);
                            VisitRows.forgetReason(handle, visit.id());
                        }));
        entries.agreementsAt(site.id()).stream()
                .map(agreement -> new AgreementEntry(agreement.id(), agreement.number(), agreement.site(), BLANK))
                .forEach(agreement -> Noted.of(agreement, TrailEvent.FORGOTTEN).in(trail,
                        () -> AgreementRows.update(handle, agreement, now)));
        entries.stepsAt(site.id()).forEach(this::forget);
        entries.requestsAt(site.id()).stream()
                .map(request -> new RequestEntry(request.kind(), request.id(), request.site(), BLANK))
                .forEach(request -> Noted.of(request, TrailEvent.FORGOTTEN).in(trail,
                        () -> RequestRows.update(handle, request, now)));
    }
}
