package icequill.ledger.entries;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** The customers, sites, machines, visits, agreements and requests of the book. */
public final class Entries {

    private final Handle handle;

    public Entries(Handle handle) {
        this.handle = handle;
    }

    public Validated<CustomerEntry> customer(String id) {
        return MergeRows.ofCustomers(handle).problem(id).<Validated<CustomerEntry>>map(Validated::invalid)
                .orElseGet(() -> new CustomerRows(handle).find(id).map(Validated::valid)
                        .orElseGet(() -> missing("customer", id)));
    }

    /** By id. */
    public List<CustomerEntry> customers() {
        return new CustomerRows(handle).all();
    }

    /** One of them; who was merged is found as whom he is now, for what went to him before. */
    public Validated<CustomerEntry> customerNow(String id) {
        return customer(MergeRows.ofCustomers(handle).into(id).orElse(id));
    }

    public Validated<SiteEntry> site(String id) {
        return MergeRows.ofSites(handle).problem(id).<Validated<SiteEntry>>map(Validated::invalid)
                .orElseGet(() -> SiteRows.find(handle, id).map(Validated::valid).orElseGet(() -> missing("site", id)));
    }

    /** The same; what was merged is found as what it is now, for visits that were entered before. */
    public Validated<SiteEntry> siteNow(String id) {
        return site(MergeRows.ofSites(handle).into(id).orElse(id));
    }

    /** What is said to whom wants to work on a customer, or a site, that was merged into another; empty for one that stands. */
    public Optional<Problem> merged(String kind, String id) {
        return new MergeRows(handle, kind).problem(id);
    }

    /** The customers who were merged into one, by id. */
    public List<CustomerEntry> mergedInto(String customer) {
        CustomerRows rows = new CustomerRows(handle);
        return MergeRows.ofCustomers(handle).of(customer).stream().flatMap(id -> rows.find(id).stream()).toList();
    }

    /** The ids of the sites that were merged into one. */
    public List<String> sitesMergedInto(String site) {
        return MergeRows.ofSites(handle).of(site);
    }

    /** By id. */
    public List<SiteEntry> sites() {
        return SiteRows.all(handle);
    }

    /** Of one customer, by id. */
    public List<SiteEntry> sitesOf(String customer) {
        List<SiteEntry> all = SiteRows.ofCustomer(handle, customer);
        MergeRows merged = MergeRows.ofSites(handle);
        return all.stream().filter(site -> merged.into(site.id()).isEmpty()).toList();
    }

    public Validated<MachineEntry> machine(String site, String id) {
        return machinesOf(site).stream().filter(machine -> machine.id().equals(id)).findFirst().map(Validated::valid)
                .orElseGet(() -> missing("machine at " + site, id));
    }

    /** Of one site, in its order. */
    public List<MachineEntry> machinesOf(String site) {
        return MachineRows.ofSite(handle, site);
    }

    /** By site, in its order. */
    public List<MachineEntry> machines() {
        return MachineRows.all(handle);
    }

    public Validated<VisitEntry> visit(String id) {
        return VisitRows.find(handle, id).map(Validated::valid).orElseGet(() -> missing("visit", id));
    }

    /** What somebody began to type, by its id, one that ended too. */
    public Optional<FormDraft> draft(String id) {
        return FormDrafts.find(handle, id);
    }

    /** All that can be gone on with of a form, the last kept first. */
    public List<FormDraft> drafts(String form) {
        return FormDrafts.all(handle, form);
    }

    /** Those that were done, by their beginning. */
    public List<VisitEntry> visits() {
        return VisitRows.all(handle, false);
    }

    /** Those still to come, by their beginning. */
    public List<VisitEntry> plannedVisits() {
        return VisitRows.all(handle, true);
    }

    /** All of one site, planned and done, by their beginning. */
    public List<VisitEntry> visitsAt(String site) {
        return VisitRows.atSite(handle, site);
    }

    /** Those of one site that were done and on whose forms something is sold ahead, by their beginning. */
    public List<VisitEntry> soldAhead(String site) {
        return VisitRows.soldAhead(handle, site);
    }

    /** Planned and done, by their beginning; those too that were withdrawn. */
    public List<VisitEntry> visits(VisitQuestion question) {
        return VisitRows.find(handle, question);
    }

    /** What the visits say that somebody asked for, by id. */
    public Map<String, String> calls() {
        return VisitRows.askedFor(handle);
    }

    /** Those that were done and share a moment with the time. */
    public List<VisitEntry> visitsDuring(ZonedDateTime from, ZonedDateTime until) {
        return VisitRows.around(handle, from, until).stream()
                .filter(visit -> visit.began().isBefore(until) && from.isBefore(visit.ended())).toList();
    }

    /** By id or number. */
    public Optional<AgreementEntry> agreement(String idOrNumber) {
        return AgreementRows.find(handle, idOrNumber);
    }

    /** By id. */
    public List<AgreementEntry> agreements() {
        return AgreementRows.all(handle);
    }

    /** Of one site, by id. */
    public List<AgreementEntry> agreementsAt(String site) {
        return AgreementRows.atSite(handle, site);
    }

    public Optional<RequestEntry> request(String kind, String id) {
        return RequestRows.find(handle, kind, id);
    }

    /** By kind and id. */
    public List<RequestEntry> requests() {
        return RequestRows.all(handle);
    }

    /** Of one kind, by id. */
    public List<RequestEntry> requests(String kind) {
        return requests().stream().filter(request -> request.kind().equals(kind)).toList();
    }

    /** Of one site, by kind and id. */
    public List<RequestEntry> requestsAt(String site) {
        return RequestRows.atSite(handle, site);
    }

    /** What happened to one quote, agreement, call, job or claim, in its order. */
    public List<LifeStep> steps(String kind, String id) {
        return new LifeRows(handle).of(kind, id);
    }

    /** The same as far as it was noted before a moment. */
    public List<LifeStep> stepsBefore(String kind, String id, Instant moment) {
        return new LifeRows(handle).before(kind, id, moment);
    }

    /** What happened last to each of a kind, by id. */
    public Map<String, String> lastSteps(String kind) {
        return new LifeRows(handle).last(kind);
    }

    /**
     * The steps of all of a kind whose last step is another than some.
     *
     * @param over events that end it
     */
    public List<LifeStep> unfinished(String kind, Set<String> over) {
        return new LifeRows(handle).unfinished(kind, over);
    }

    /** What happened to all of a kind, by id and in order. */
    public List<LifeStep> steps(String kind) {
        return new LifeRows(handle).all(kind);
    }

    /** What happened to all that lives at a site, by kind and id. */
    public List<LifeStep> stepsAt(String site) {
        return new LifeRows(handle).atSite(site);
    }

    /** What goes along with a mail and is no paper of the book, in its order. */
    public List<MailFile> mailFiles(String mail) {
        return MailFiles.of(handle, mail);
    }

    /** By visit; those that stand are not among them. */
    public Map<String, Withdrawal> withdrawals() {
        return VisitRows.withdrawals(handle);
    }

    /** Empty for a visit that stands. */
    public Optional<Withdrawal> withdrawal(String visit) {
        return VisitRows.withdrawal(handle, visit);
    }

    private static <T> Validated<T> missing(String kind, String id) {
        return Validated.invalid(new Problem(Code.UNKNOWN_NAME, Place.NOWHERE,
                "the book has no " + kind + " \"" + id + "\"", "add it first, or see the list"));
    }

    /** Whether there is such a row. */
    public boolean has(String table, String id) {
        return handle.createQuery("SELECT 1 FROM " + table + " WHERE id = :id").bind("id", id).mapTo(Integer.class)
                .findOne().isPresent();
    }
}
