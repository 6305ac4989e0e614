package icequill.shop;

import icequill.account.AccountNotes;
import icequill.account.PaymentRequest;
import icequill.account.ReminderTerms;
import icequill.agreement.Earning;
import icequill.agreement.NoticeRules;
import icequill.files.form.AccountReader;
import icequill.files.form.AgreementReader;
import icequill.files.form.BrushingReader;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.PaymentReader;
import icequill.files.form.PlanRequestReader;
import icequill.files.form.SiteHistoryReader;
import icequill.files.form.SiteReader;
import icequill.files.form.StoredCustomers;
import icequill.files.form.StoredForms;
import icequill.files.form.VisitReader;
import icequill.files.pricing.PricingReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.Tree;
import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.inputs.ForecastRates;
import icequill.forecast.inputs.SiteHistory;
import icequill.party.Customer;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.SiteKinds;
import icequill.party.Sourcing;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.rates.Rates;
import icequill.request.AgreementRequest;
import icequill.request.BrushingRequest;
import icequill.request.PlanRequest;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRules;
import icequill.work.PurchaseOrder;
import icequill.work.Sale;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One reading of a shop folder. What is asked for is read; whatever is wrong is collected, and {@link #problems} gives it
 * all. For one run and one thread.
 */
public final class ShopFolder {

    private static final String CUSTOMER = "customer";
    private static final String TAX_PLACE = "taxPlace";

    private final Path folder;
    private final ShopSettings settings;
    private final Problems problems = new Problems();
    private final List<ShopText> texts;
    private final FormSource book;
    private final FormFinder finder;

    private ShopFolder(Path folder, ShopSettings settings, FormSource book, List<Form> given) {
        this.folder = folder;
        this.settings = settings;
        this.book = book;
        this.texts = new ArrayList<>(settings.texts());
        this.finder = new FormFinder(new FolderFiles(folder, problems), book, given, problems, this::noted);
        problems.addAll(settings.problems());
    }

    /**
     * A reading that begins with what was read of shop.yaml and pricing/.
     *
     * @param book where forms are kept
     * @param given forms that were handed over, and come before those of the book
     */
    static ShopFolder of(Path folder, ShopSettings settings, FormSource book, List<Form> given) {
        return new ShopFolder(folder, settings, book, given);
    }

    /** The same shop and what was found wrong with it, with forms that were handed over and come before those of the book. */
    public ShopFolder with(List<Form> forms) {
        ShopFolder shop = of(folder, settings, book, forms);
        shop.problems.addAll(problems.list());
        shop.texts.addAll(texts);
        return shop;
    }

    /** Everything wrong in what was read so far. */
    public List<Problem> problems() {
        return problems.list();
    }

    public Optional<Shop> shop() {
        return settings.shop();
    }

    /** How the shop reminds customers of what they owe. */
    public ReminderTerms reminders() {
        return settings.reminders();
    }

    /** How what is paid ahead for agreements is earned. */
    public Earning earning() {
        return settings.earning();
    }

    /** Empty, with a problem that says why, when rates of some kind are missing altogether. */
    public Optional<RateSchedule> schedule() {
        return settings.pricing().flatMap(PricingReader.Pricing::schedule);
    }

    /** Empty, with a problem that says why, when there are none. */
    public Optional<TaxRules> taxes() {
        return settings.pricing().flatMap(PricingReader.Pricing::taxes);
    }

    /**
     * The tax rules of a site, or of the shop where it is set so.
     *
     * @param beyond that there are none for its place is added here
     */
    public Optional<TaxPlace> taxPlace(Site site, LocalDate day, Problems beyond) {
        return taxPlace(site, day, false, beyond);
    }

    /** The same of a visit, and of a sale those where it was handed over: what is fetched is fetched at the shop. */
    Optional<TaxPlace> taxPlace(Visit visit, Site site, Problems beyond) {
        boolean isFetched = visit.sale().filter(sale -> sale.way() == Sale.Way.FETCHED).isPresent();
        return taxPlace(site, visit.day(), isFetched, beyond);
    }

    private Optional<TaxPlace> taxPlace(Site site, LocalDate day, boolean isFetched, Problems beyond) {
        Shop own = settings.shop().orElseThrow();
        boolean atShop = isFetched || own.sourcing() == Sourcing.SHOP;
        Place asked = atShop
                ? place(ShopSettings.SHOP, TAX_PLACE)
                : finder.given(FormKind.SITE, site.id())
                        .map(form -> place(form.tree().place().file(), TAX_PLACE))
                        .orElse(Place.ofFile("the book's site " + site.id()));
        return taxes().flatMap(
                rules -> beyond.take(rules.at(day, atShop ? own.taxPlace() : site.taxPlace(), asked)));
    }

    /** Prices as they are shown at a place: with its tax, where it has it so. */
    Rates shown(Rates prices, Optional<TaxPlace> place) {
        return settings.shop().flatMap(own -> place.map(found -> found.shown(prices, own.taxBasis()))).orElse(prices);
    }

    /** Empty, with a problem that says why, when there are none. */
    public Optional<NoticeRules> notices() {
        return settings.pricing().flatMap(PricingReader.Pricing::notices);
    }

    /** The kinds of sites that there are for the shop. */
    public SiteKinds siteKinds() {
        return settings.siteKinds();
    }

    /** What calls are forecast by on a day; empty where the shop does not say, or says it wrong, which is a problem. */
    public Optional<ForecastRates> forecast(LocalDate day) {
        return settings.pricing().flatMap(all -> all.forecasts().at(day));
    }

    /** The limits of energy on record; without any where there is no file of them. */
    public EnergyLimits energy() {
        return settings.pricing().map(PricingReader.Pricing::energy).orElseGet(() -> new EnergyLimits(List.of()));
    }

    /** All texts read so far, for a check that they can be printed. */
    public List<ShopText> texts() {
        return List.copyOf(texts);
    }

    /** Where a text stands that was read from a file; the file alone when there is none. */
    public Place place(String file, String path) {
        return texts.stream().map(ShopText::place)
                .filter(place -> place.file().equals(file) && place.path().equals(path))
                .findFirst().orElseGet(() -> Place.ofFile(file));
    }

    /**
     * Reads a site.
     *
     * @param asked where it is named
     */
    public Optional<Site> site(String id, Place asked) {
        Optional<Form> form = finder.given(FormKind.SITE, id);
        return form.isPresent()
                ? form.flatMap(this::site)
                : problems.take(book.site(id)).flatMap(stored -> stored.isPresent()
                        ? forms().site(stored.get())
                        : finder.unknown(List.of(FormKind.SITE), id, asked));
    }

    /** A site from its form, with whoever pays: he stands there, or is named. */
    public Optional<Site> site(Form form) {
        Optional<Fields> fields = forms().site(form.tree());
        Optional<Customer> payer = fields.flatMap(this::payer);
        return fields
                .flatMap(found -> new SiteReader(found, siteKinds()).read(form.id(), payer.orElse(SiteReader.UNKNOWN))
                        .map(site -> site.of(accounts(found))))
                .filter(site -> payer.isPresent());
    }

    /** Of a customer who is named; one who is handed over with the site may not be in the book yet. */
    private List<String> accounts(Fields site) {
        return site.text(CUSTOMER).map(id -> book.accounts(id).found().orElse(List.of(id))).orElse(List.of());
    }

    private Optional<Customer> payer(Fields site) {
        return site.child(CUSTOMER).isPresent()
                ? site.child(CUSTOMER).flatMap(who -> customers().customer(who.branch()))
                : site.text(CUSTOMER).flatMap(id -> customer(id, site.place(CUSTOMER)));
    }

    /**
     * Reads a customer, billed through the account that he belongs to where nobody is named for himself.
     *
     * @param asked where he is named
     */
    public Optional<Customer> customer(String id, Place asked) {
        Optional<Form> form = finder.given(FormKind.CUSTOMER, id);
        return form.isPresent()
                ? form.flatMap(this::customer)
                : problems.take(book.customer(id))
                        .flatMap(found -> found.isPresent()
                                ? found
                                : finder.unknown(List.of(FormKind.CUSTOMER), id, asked));
    }

    /** A customer from a form of his own, in the same way. */
    public Optional<Customer> customer(Form form) {
        Optional<Customer> customer = form.tree() instanceof Tree.Branch branch
                ? customers().customer(branch)
                : fields(form, FormKind.CUSTOMER).flatMap(none -> Optional.empty());
        return customer.flatMap(found -> found.billTo().entries().isEmpty()
                ? form.text(StoredForms.PARENT_KEY).flatMap(parent -> customer(parent, form.tree().place()))
                        .map(parent -> found.billed(parent.addressed()))
                : Optional.of(found));
    }

    /** For sites and machines that stand in no file; what is wrong with them is collected here too. */
    public StoredForms forms() {
        return new StoredForms(siteKinds(), problems, this::noted);
    }

    /** The same for customers. */
    public StoredCustomers customers() {
        return new StoredCustomers(problems, this::noted);
    }

    /**
     * Finds a form by its name; whether it says what its kind must say is not looked at yet.
     *
     * @param kinds that will do; a file that does not say its kind is taken for the first
     */
    public Optional<Form> form(FormName name, List<FormKind> kinds) {
        return finder.form(name, kinds);
    }

    /**
     * The same of one that a form names.
     *
     * @param asked where it is named
     */
    Optional<Form> form(String id, List<FormKind> kinds, Place asked) {
        return finder.form(id, kinds, asked);
    }

    /** All forms of a file, which may hold several; one that does not say its kind is reported and left out. */
    public List<Form> forms(Path file) {
        return finder.forms(file);
    }

    /** What the customer ordered by a call of the book, with the limit as it was allowed last. */
    Validated<Optional<PurchaseOrder>> orderOfCall(String id) {
        return book.orderOfCall(id);
    }

    /** The agreements for a site: those that were given, and those of the book that they do not take the place of. */
    public List<Form> agreementsAt(String site) {
        return finder.agreementsAt(site);
    }

    /** What was sold ahead at a site and billed, the oldest first. */
    List<SoldAhead> soldAhead(String site) {
        return problems.take(book.soldAhead(site)).orElse(List.of());
    }

    /** Whether what is to be quoted is maintenance; otherwise it is a planned visit. What is wrong shows when it is read. */
    public boolean isMaintenance(FormName name) {
        return with(finder.given())
                .form(name, List.of(FormKind.PLANNED_VISIT, FormKind.VISIT, FormKind.MAINTENANCE_REQUEST))
                .flatMap(Form::kind).filter(kind -> kind == FormKind.MAINTENANCE_REQUEST).isPresent();
    }

    /** Reads a visit, done or planned; empty also while the shop has problems. */
    public Optional<Visit> visit(Form form) {
        return fields(form, FormKind.VISIT)
                .flatMap(fields -> settings.shop().flatMap(found -> new VisitReader(fields, found).read(form.id())));
    }

    /** Reads a request for a maintenance quote, empty also while the shop has problems. */
    public Optional<PlanRequest> maintenance(Form form) {
        return fields(form, FormKind.MAINTENANCE_REQUEST)
                .flatMap(fields -> settings.shop().flatMap(found -> PlanRequestReader.read(fields, found)));
    }

    /** Reads what a request for a maintenance quote tells of its site for a forecast, empty also while the shop has problems. */
    public Optional<SiteHistory> history(Form form) {
        return fields(form, FormKind.MAINTENANCE_REQUEST)
                .flatMap(fields -> settings.shop().map(found -> SiteHistoryReader.read(fields, found)));
    }

    /** Reads an agreement, empty also while the shop has problems. */
    public Optional<AgreementRequest> agreement(Form form) {
        return fields(form, FormKind.AGREEMENT)
                .flatMap(fields -> settings.shop().flatMap(found -> new AgreementReader(fields, found).read()));
    }

    /** Reads a request for a brushing sheet, empty also while the shop has problems. */
    public Optional<BrushingRequest> brushing(Form form) {
        return fields(form, FormKind.BRUSHING_REQUEST)
                .flatMap(fields -> settings.shop().flatMap(found -> BrushingReader.read(fields, found)));
    }

    /** Reads what is known of a customer's account, empty also while the shop has problems. */
    public Optional<AccountNotes> account(Form form) {
        return fields(form, FormKind.ACCOUNT)
                .flatMap(fields -> settings.shop().flatMap(found -> new AccountReader(fields, found).read()));
    }

    /** The form of a customer's account: one that was given, else the book's. */
    Optional<Form> accountForm(String customer, Supplier<Optional<Form>> stored) {
        return finder.given(FormKind.ACCOUNT, customer).or(stored);
    }

    /** Reads a payment, empty also while the shop has problems. */
    public Optional<PaymentRequest> payment(Form form) {
        return fields(form, FormKind.PAYMENT)
                .flatMap(fields -> settings.shop().flatMap(found -> new PaymentReader(fields, found).read()));
    }

    private Optional<Fields> fields(Form form, FormKind kind) {
        return Fields.checked(form.tree(), kind.schema(), problems);
    }

    private void noted(Tree tree) {
        texts.addAll(ShopText.all(tree));
    }
}
