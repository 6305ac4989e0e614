package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.ledger.Reading;
import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.papers.IssuedPaper;
import icequill.ledger.papers.PaperKind;
import icequill.party.Customer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.steps.AgreementSteps;
import icequill.shop.steps.SiteOwners;
import icequill.work.PurchaseOrder;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The forms of a shop's book. It remembers what it gave, so that whoever stores later can see whether that still holds. */
public final class BookForms implements FormSource {

    private final ShopBook book;
    /** By what to call it. */
    private final Map<String, Given> given = new LinkedHashMap<>();

    /** What was given, and how to ask again. */
    private record Given(Object answer, Function<Reading, Validated<?>> again) {}

    public BookForms(ShopBook book) {
        this.book = book;
    }

    /** A new reading of a shop, whose forms come from the book. */
    public static ShopFolder shop(ShopBook book) {
        return new BookForms(book).shop();
    }

    /** The folder of the book's shop, whose forms come from here. */
    public ShopFolder shop() {
        return shop(book, this);
    }

    /** The folder of a book's shop, with whatever was laid over its forms. */
    static ShopFolder shop(ShopBook book, FormSource forms) {
        ShopFolder shop = ShopFolder.of(book.folder(), book.ratesInUse().settings(), forms, List.of());
        return book.given().isEmpty()
                ? shop
                : shop.with(book.given().stream().flatMap(file -> shop.forms(file).stream()).toList());
    }

    @Override
    public Validated<Optional<Customer>> customer(String id) {
        return asked("customer \"" + id + "\"", reading -> customer(reading, id), Optional.empty());
    }

    @Override
    public Validated<Optional<StoredForms.Stored>> site(String id, Optional<LocalDate> day) {
        return asked("site \"" + id + "\" or its customer" + day.map(one -> " on " + one).orElse(""),
                reading -> site(reading, id, day), Optional.empty());
    }

    @Override
    public Validated<List<String>> accounts(String customer) {
        return asked("the accounts of customer \"" + customer + "\"",
                reading -> Validated.valid(accounts(customer, reading.entries()::customer)), List.of(customer));
    }

    @Override
    public Validated<Optional<Form>> form(FormKind kind, String name) {
        return asked(kind.words() + " \"" + name + "\"", reading -> Validated.valid(form(reading, kind, name)),
                Optional.empty());
    }

    @Override
    public Validated<List<Form>> agreementsAt(String site) {
        return asked("an agreement for site \"" + site + "\"", reading -> Validated.valid(
                agreementsAt(reading, site).stream().filter(entry -> !entry.isForgotten()).map(BookForms::form)
                        .toList()),
                List.of());
    }

    @Override
    public Validated<List<Form>> visitsAt(String site) {
        return asked("a visit at site \"" + site + "\"", reading -> Validated.valid(
                visits(reading.entries().visitsAt(site), visit -> reading.entries().withdrawal(visit).isPresent())),
                List.of());
    }

    /** Those that were done, stand, and are known. */
    static List<Form> visits(List<VisitEntry> visits, Predicate<String> isWithdrawn) {
        return visits.stream().filter(visit -> !visit.isPlanned() && !visit.isForgotten())
                .filter(visit -> !isWithdrawn.test(visit.id())).map(BookForms::form).toList();
    }

    @Override
    public Validated<AgreementSteps> stepsOf(String agreement) {
        return asked("what happened to agreement " + agreement, reading -> Validated.valid(steps(reading, agreement)),
                new AgreementSteps(agreement, List.of()));
    }

    /** What happened to an agreement, by its number. */
    public static AgreementSteps steps(Reading reading, String agreement) {
        return new AgreementSteps(agreement, reading.entries().steps(AgreementSteps.KIND, agreement));
    }

    @Override
    public Validated<List<SoldAhead>> soldAhead(String site) {
        return asked("what was sold ahead at site \"" + site + "\"",
                reading -> Validated.valid(SoldAhead.at(reading, site, paper -> true)), List.of());
    }

    @Override
    public Validated<List<Form>> answeredCalls(String site) {
        return asked("visits at site \"" + site + "\" that answered calls", reading -> Validated.valid(
                answeredCalls(reading, reading.entries().visitsAt(site), paper -> true)), List.of());
    }

    /** Those among visits, by the papers that are known. */
    static List<Form> answeredCalls(Reading reading, List<VisitEntry> visits, Predicate<IssuedPaper> known) {
        Set<String> withdrawn = reading.entries().withdrawals().keySet();
        List<VisitEntry> answered = visits.stream().filter(visit -> !visit.isPlanned() && !visit.isForgotten()
                && visit.data().contains("\"asked\"") && !withdrawn.contains(visit.id())).toList();
        Map<String, List<IssuedPaper>> papers = reading.papers()
                .ofVisits(answered.stream().map(VisitEntry::id).toList());
        return answered.stream().filter(visit -> !isGivenBack(reading, papers.getOrDefault(visit.id(), List.of())
                .stream().filter(known).toList())).map(BookForms::form).toList();
    }

    private static boolean isGivenBack(Reading reading, List<IssuedPaper> papers) {
        List<IssuedPaper> invoices = papers.stream().filter(paper -> paper.series().kind() == PaperKind.INVOICE)
                .toList();
        return !invoices.isEmpty() && invoices.stream()
                .allMatch(invoice -> invoice.isGivenBackBy(reading.papers().creditsOf(invoice.number())));
    }

    @Override
    public Validated<Optional<PurchaseOrder>> orderOfCall(String id) {
        return asked("call \"" + id + "\"", reading -> book.ratesInUse().settings().shop()
                .map(shop -> new BookedCalls(shop, reading)).filter(calls -> calls.has(id))
                .map(calls -> calls.find(id).map(call -> Optional.of(call.state().known().order())))
                .orElseGet(() -> Validated.valid(Optional.empty())), Optional.empty());
    }

    /** To whom a site belonged before. */
    public static SiteOwners owners(Reading reading, String site) {
        return new SiteOwners(site, reading.entries().steps(SiteOwners.KIND, site));
    }

    /** The customer to whom a site belonged on a day, by id. */
    public static String owner(Reading reading, SiteEntry site, LocalDate day) {
        return owners(reading, site.id()).formerOn(day)
                .map(former -> reading.entries().customerNow(former).found().map(CustomerEntry::id).orElse(former))
                .orElse(site.customer());
    }

    /** The agreements for a site, alone or among several, the forgotten among them. */
    public static List<AgreementEntry> agreementsAt(Reading reading, String site) {
        return Stream.concat(reading.entries().agreementsAt(site).stream(),
                overSeveral(reading.entries().agreements(), site,
                        AgreementSteps.cameInto(reading.entries().stepsAt(site))))
                .distinct().toList();
    }

    /**
     * Those over several sites, of which one is the site.
     *
     * @param cameInto the numbers of those that it came into later
     */
    static Stream<AgreementEntry> overSeveral(List<AgreementEntry> all, String site, Set<String> cameInto) {
        return all.stream().filter(entry -> cameInto.contains(entry.number())
                || (entry.data().contains(Form.SITES) && form(entry).isForSite(site)));
    }

    /** A customer of the book, who must be there. */
    public Validated<Customer> payer(String id) {
        return customer(id).then(found -> found.map(Validated::valid).orElseGet(
                () -> ids(FormKind.CUSTOMER).then(known -> Validated.invalid(
                        UnknownName.name("customer", id, known, "see: icequill customer list")))));
    }

    private <T> Validated<T> asked(String what, Function<Reading, Validated<T>> read, T without) {
        Validated<T> found = book.exists() ? book.read(read) : Validated.valid(without);
        return found.map(answer -> {
            given.put(what, new Given(answer, read::apply));
            return answer;
        });
    }

    /** Goes on when the book still says what was given here. */
    public <T> Validated<T> unchanged(Reading reading, Supplier<Validated<T>> next) {
        Problems problems = new Problems();
        given.forEach((what, before) -> problems.take(before.again().apply(reading))
                .filter(now -> !now.equals(before.answer())).ifPresent(now -> problems.add(changed(what))));
        return problems.or(() -> book).then(same -> next.get());
    }

    public static Problem changed(String what) {
        return new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                what + " was changed by somebody else while this was worked out, so nothing was stored",
                "the same again, which looks at it anew");
    }

    @Override
    public Validated<List<String>> ids(FormKind kind) {
        return book.exists() ? book.read(reading -> Validated.valid(ids(reading, kind))) : Validated.valid(List.of());
    }

    private static List<String> ids(Reading reading, FormKind kind) {
        return switch (kind) {
        case CUSTOMER -> reading.entries().customers().stream().map(CustomerEntry::id).toList();
        case SITE -> reading.entries().sites().stream().map(SiteEntry::id).toList();
        case AGREEMENT -> reading.entries().agreements().stream()
                .flatMap(entry -> Stream.of(entry.id(), entry.number())).toList();
        case MAINTENANCE_REQUEST, BRUSHING_REQUEST ->
            reading.entries().requests(kind.key()).stream().map(RequestEntry::id).toList();
        case PLANNED_VISIT -> reading.entries().plannedVisits().stream().map(VisitEntry::id).toList();
        case VISIT, SALE -> reading.entries().visits().stream().map(VisitEntry::id).toList();
        case ACCOUNT -> reading.accounts().accounts().stream().map(AccountEntry::customer).toList();
        case PAYMENT -> reading.accounts().payments().stream().map(PaymentEntry::id).toList();
        };
    }

    private static Optional<Form> form(Reading reading, FormKind kind, String name) {
        return switch (kind) {
        case AGREEMENT -> reading.entries().agreement(name).filter(entry -> !entry.isForgotten())
                .map(BookForms::form);
        case MAINTENANCE_REQUEST, BRUSHING_REQUEST -> reading.entries().request(kind.key(), name)
                .filter(entry -> !entry.isForgotten())
                .map(BookForms::form);
        case VISIT, PLANNED_VISIT -> reading.entries().visit(name).found()
                .filter(entry -> entry.isPlanned() == (kind == FormKind.PLANNED_VISIT) && !entry.isForgotten())
                .map(BookForms::form);
        case ACCOUNT -> reading.accounts().account(name).filter(entry -> !entry.isForgotten()).map(BookForms::form);
        case CUSTOMER, SITE, PAYMENT, SALE -> Optional.empty();
        };
    }

    /** An agreement as a form. */
    public static Form form(AgreementEntry entry) {
        return Form.stored(FormKind.AGREEMENT, entry.id(), entry.data());
    }

    /** A request as a form. */
    public static Form form(RequestEntry entry) {
        return Form.stored(FormKind.of(entry.kind()).orElseThrow(), entry.id(), entry.data());
    }

    /** What is known of an account as a form. */
    public static Form form(AccountEntry entry) {
        return Form.stored(FormKind.ACCOUNT, entry.customer(), entry.data());
    }

    /** A visit as a form. */
    public static Form form(VisitEntry entry) {
        return Form.stored(entry.isPlanned() ? FormKind.PLANNED_VISIT : FormKind.VISIT, entry.id(), entry.data());
    }

    private static Validated<Optional<StoredForms.Stored>> site(Reading reading, String id, Optional<LocalDate> day) {
        return reading.entries().siteNow(id).found().map(site -> day
                .flatMap(one -> owners(reading, site.id()).formerOn(one)).map(reading.entries()::customerNow)
                .orElseGet(() -> reading.entries().customer(site.customer()))
                .then(payer -> stored(reading, site, payer))).orElseGet(() -> Validated.valid(Optional.empty()));
    }

    private static Validated<Optional<StoredForms.Stored>> stored(Reading reading, SiteEntry site,
            CustomerEntry payer) {
        return payer.forgotten().isPresent()
                ? Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the customer of site " + site.id() + " was forgotten on " + payer.forgotten().get(), ""))
                : customer(reading, payer)
                        .map(customer -> Optional.of(new StoredForms.Stored(site.id(), customer,
                                accounts(payer.id(), reading.entries()::customer), site.data(),
                                reading.entries().machinesOf(site.id()).stream().map(MachineEntry::data).toList())));
    }

    private static Validated<Optional<Customer>> customer(Reading reading, String id) {
        return reading.entries().customer(id).found().map(entry -> customer(reading, entry).map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()));
    }

    /** The customer, billed through the parent account where nobody is named for himself. */
    static Validated<Customer> customer(Reading reading, CustomerEntry entry) {
        return customer(entry, id -> reading.entries().customer(id));
    }

    /** His id, and those of the accounts above him, as far as they are known. */
    static List<String> accounts(String customer, Function<String, Validated<CustomerEntry>> known) {
        List<String> accounts = new ArrayList<>();
        Optional<String> next = Optional.of(customer);
        while (next.isPresent()) {
            accounts.add(next.get());
            next = known.apply(next.get()).found().flatMap(CustomerEntry::parent);
        }
        return accounts;
    }

    /** The same with the accounts above him, by their ids. */
    static Validated<Customer> customer(CustomerEntry entry, Function<String, Validated<CustomerEntry>> known) {
        return entry.parent().isPresent() && entry.customer().billTo().entries().isEmpty()
                ? known.apply(entry.parent().get()).then(parent -> customer(parent, known))
                        .map(parent -> entry.customer().billed(parent.addressed()))
                : Validated.valid(entry.customer());
    }
}
