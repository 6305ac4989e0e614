package icequill.office.register;

import icequill.answer.MergeResult;
import icequill.files.form.CustomerForm;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Json;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.office.billing.PendingWrite;
import icequill.party.Customer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.EntryRows;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/** The office that makes one customer, or one site, of two that turned out to be one. */
public final class MergeOffice {

    /** What would change what is charged or taxed is never taken over unasked. */
    private static final MergedForm.Rules OF_CUSTOMER = new MergedForm.Rules(
            Set.of("telephone", "vendorNumber", "language", "accepted"), Set.of("contacts", "certificates"));
    private static final MergedForm.Rules OF_ACCOUNT = new MergedForm.Rules(Set.of("latePayment"),
            Set.of("invoices", "creditNotes", "onAccount", "disputed", "reminders"));
    private static final MergedForm.Rules OF_SITE = new MergedForm.Rules(
            Set.of("telephone", "storeNumber", "parking", "roof"),
            Set.of("contacts", "modifiers", "layout.ways", "layout.neverBothOff", "layout.neverAllOff",
                    "layout.circulation"));

    private final ShopBook book;
    private final LocalDate today;

    private MergeOffice(Path folder, Clock clock) {
        this.book = ShopBook.of(folder, clock);
        this.today = ShopDay.today(folder, clock);
    }

    public static MergeOffice of(Path folder, Clock clock) {
        return new MergeOffice(folder, clock);
    }

    /**
     * Makes one customer of two. Sites, accounts below and payments go to the survivor; papers stay as they were issued, and are found under
     * him.
     *
     * @param dryRun whether to look only
     */
    public Validated<MergeResult> customers(String from, String into, boolean dryRun) {
        ShopFolder shop = BookForms.shop(book);
        return merged(from, into, dryRun, open -> RegisterOffice.payer(open, Optional.of(from))
                .then(first -> RegisterOffice.payer(open, Optional.of(into))
                        .then(second -> customers(shop, open, first, second))));
    }

    /**
     * Makes one site of two of the same customer. Machines and visits go to the survivor; papers stay as they were issued.
     *
     * @param dryRun whether to look only
     */
    public Validated<MergeResult> sites(String from, String into, boolean dryRun) {
        ShopFolder shop = BookForms.shop(book);
        return merged(from, into, dryRun, open -> RegisterOffice.found(open, from)
                .then(first -> RegisterOffice.found(open, into).then(second -> sites(shop, open, first, second))));
    }

    private Validated<MergeResult> merged(String from, String into, boolean dryRun,
            Function<Transaction, Validated<MergeResult>> work) {
        if (from.equals(into)) {
            return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "\"" + from + "\" and itself",
                    "--into with another id"));
        }
        return book.read(open -> Validated.valid(new PendingWrite<>(book, work)))
                .then(pending -> dryRun ? pending.tried().map(MergeResult::tried) : pending.done());
    }

    private Validated<MergeResult> customers(ShopFolder shop, Transaction open, CustomerEntry from,
            CustomerEntry into) {
        MergedForm form = MergedForm.of(form(from), form(into), OF_CUSTOMER);
        Optional<Customer> customer = shop.customers().customer(form.values(), into.parent().isPresent());
        List<String> sites = open.entries().sitesOf(from.id()).stream().map(SiteEntry::id).toList();
        List<String> accounts = open.entries().customers().stream()
                .filter(entry -> entry.parent().filter(from.id()::equals).isPresent()).map(CustomerEntry::id).toList();
        int papers = open.papers().ofCustomer(from.id()).size();
        List<String> payments = open.accounts().payments().stream()
                .filter(entry -> entry.customer().equals(from.id())).map(PaymentEntry::id).toList();
        MergedForm account = MergedForm.of(account(open, from.id()), account(open, into.id()), OF_ACCOUNT);
        return GlyphCheck.report(shop, new Problems()).or(customer::orElseThrow)
                .then(valid -> open.merging().customers(from.id(),
                        new CustomerEntry(into.id(), valid, into.parent(), into.forgotten()),
                        new AccountEntry(into.id(), Json.line(account.values())), today))
                .map(done -> new MergeResult("customer", from.id(), into.id(),
                        List.of(new MergeResult.Moved("sites", sites), new MergeResult.Moved("accounts", accounts),
                                new MergeResult.Moved("payments", payments)),
                        papers,
                        Stream.concat(form.taken().stream(), account.taken().stream()).toList(),
                        Stream.concat(form.differs().stream(), account.differs().stream()).toList(), false));
    }

    private static Map<String, Object> form(CustomerEntry entry) {
        return Json.map(CustomerForm.of(Optional.empty(), entry.customer()).json());
    }

    /** What is known of a customer's account. */
    private static Map<String, Object> account(Reading open, String customer) {
        return open.accounts().account(customer).filter(entry -> !entry.isForgotten())
                .map(entry -> Json.map(entry.data())).orElseGet(() -> Map.of("format", 1));
    }

    private Validated<MergeResult> sites(ShopFolder shop, Transaction open, SiteEntry from, SiteEntry into) {
        MergedForm form = MergedForm.of(Json.map(from.data()), Json.map(into.data()), OF_SITE);
        Map<String, String> machines = new LinkedHashMap<>(RegisterOffice.machines(open, into.id()));
        Map<String, String> moved = RegisterOffice.machines(open, from.id());
        moved.forEach(machines::putIfAbsent);
        Problems problems = new Problems();
        Optional<StoredForms.Whole> whole = problems.take(open.entries().customer(into.customer()))
                .flatMap(payer -> shop.forms().site(into.id(), Optional.of(payer.customer()), Map.of(), Place.NOWHERE,
                        Optional.of(Json.text(form.values())), machines, List.of()));
        List<VisitEntry> visits = open.entries().visitsAt(from.id());
        List<AgreementEntry> agreements = BookForms.agreementsAt(open, from.id());
        overBoth(agreements, BookForms.agreementsAt(open, into.id())).ifPresent(problems::add);
        List<RequestEntry> requests = open.entries().requestsAt(from.id());
        int papers = Math
                .toIntExact(visits.stream().mapToLong(visit -> open.papers().ofVisit(visit.id()).size()).sum());
        return GlyphCheck.report(shop, problems).or(whole::orElseThrow)
                .then(valid -> open.merging().sites(from.id(), EntryRows.entry(into.customer(), valid), today))
                .then(done -> toldAnew(open, visits, into.id()))
                .then(done -> toldAnew(open, agreements, requests, from.id(), into.id()))
                .map(done -> new MergeResult("site", from.id(), into.id(),
                        List.of(new MergeResult.Moved("machines", List.copyOf(moved.keySet())),
                                new MergeResult.Moved("visits", visits.stream().map(VisitEntry::id).toList()),
                                new MergeResult.Moved("agreements",
                                        agreements.stream().map(AgreementEntry::id).toList()),
                                new MergeResult.Moved("requests",
                                        requests.stream().map(RequestEntry::id).toList())),
                        papers, form.taken(), form.differs(), false));
    }

    /** That an agreement is over both sites, where one is: it would name one of them twice. */
    private static Optional<Problem> overBoth(List<AgreementEntry> agreements, List<AgreementEntry> ofInto) {
        return agreements.stream().filter(agreement -> !agreement.isForgotten()).filter(ofInto::contains).findFirst()
                .map(agreement -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "agreement \"" + agreement.id() + "\" is over both sites",
                        "the agreement for one of them first: icequill import"));
    }

    /** What is not billed yet says its new site itself; what is billed stays as it was recorded. */
    private static Validated<Boolean> toldAnew(Transaction open, List<VisitEntry> visits, String site) {
        Problems problems = new Problems();
        visits.stream().filter(visit -> open.papers().ofVisit(visit.id()).isEmpty()
                && open.entries().withdrawal(visit.id()).isEmpty())
                .forEach(visit -> problems.take(open.register().change(new VisitEntry(visit.id(), site, visit.began(),
                        visit.ended(), visit.purchaseOrder(), visit.isPlanned(), StoredForms.at(site, visit.data())))));
        return problems.or(() -> true);
    }

    private static Validated<Boolean> toldAnew(Transaction open, List<AgreementEntry> agreements,
            List<RequestEntry> requests, String from, String site) {
        Problems problems = new Problems();
        agreements.stream().filter(agreement -> !agreement.isForgotten())
                .forEach(agreement -> problems.take(open.register().change(new AgreementEntry(agreement.id(),
                        agreement.number(), agreement.site().equals(from) ? site : agreement.site(),
                        StoredForms.moved(from, site, agreement.data())))));
        requests.forEach(request -> problems.take(open.register().change(new RequestEntry(request.kind(), request.id(),
                site, StoredForms.at(site, request.data())))));
        return problems.or(() -> true);
    }
}
