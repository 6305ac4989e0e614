package icequill.shop;

import icequill.account.ReminderTerms;
import icequill.agreement.Earning;
import icequill.agreement.NoticeRules;
import icequill.agreement.UsualTerms;
import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredCustomers;
import icequill.files.form.StoredForms;
import icequill.files.kept.FolderShelf;
import icequill.files.pricing.PricingReader;
import icequill.files.yaml.FolderFiles;
import icequill.forecast.effects.EnergyLimits;
import icequill.forecast.inputs.ForecastRates;
import icequill.party.Customer;
import icequill.party.Shop;
import icequill.party.Site;
import icequill.party.SiteKinds;
import icequill.planner.kept.KeptTimetables;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.rates.RateSchedule;
import icequill.request.AgreementRequest;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRules;
import icequill.work.PurchaseOrder;
import icequill.work.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One reading of a shop folder. What is asked for is read; whatever is wrong is collected, and {@link #problems} gives it
 * all. For one run and one thread.
 */
public final class ShopFolder {

    private final Path folder;
    private final ShopSettings settings;
    private final Problems problems = new Problems();
    private final ShopTexts texts;
    private final FormSource book;
    private final FormFinder finder;

    private ShopFolder(Path folder, ShopSettings settings, FormSource book, List<Form> given) {
        this.folder = folder;
        this.settings = settings;
        this.book = book;
        this.texts = new ShopTexts(settings.texts());
        this.finder = new FormFinder(new FolderFiles(folder, problems), book, given, problems, texts::add);
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
        shop.texts.addAll(texts.list());
        return shop;
    }

    /** Everything wrong in what was read so far. */
    public List<Problem> problems() {
        return problems.list();
    }

    public Optional<Shop> shop() {
        return settings.shop();
    }

    /** The timetables that were found for it before; without them they are looked for again. */
    public KeptTimetables timetables() {
        return new KeptTimetables(new FolderShelf(folder.resolve("cache").resolve("timetables")));
    }

    /** How the shop reminds customers of what they owe. */
    public ReminderTerms reminders() {
        return settings.reminders();
    }

    /** How what is paid ahead for agreements is earned. */
    public Earning earning() {
        return settings.earning();
    }

    /** What agreements say that were made of quotes, unless something else is said. */
    public UsualTerms agreed() {
        return settings.agreed();
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
        return taxPlaces().at(site, day, beyond);
    }

    /** By which place's rules what is done is taxed. */
    TaxPlaces taxPlaces() {
        return new TaxPlaces(settings, finder, texts);
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
        return texts.list();
    }

    /**
     * Reads a site.
     *
     * @param asked where it is named
     */
    public Optional<Site> site(String id, Place asked) {
        return sites().site(id, Optional.empty(), asked);
    }

    /** The same as it belonged to whoever owned it on a day. */
    public Optional<Site> site(String id, LocalDate day, Place asked) {
        return sites().site(id, Optional.of(day), asked);
    }

    /** A site from its form, with whoever pays: he stands there, or is named. */
    public Optional<Site> site(Form form) {
        return sites().site(form);
    }

    private SiteForms sites() {
        return new SiteForms(finder, siteKinds(), payers());
    }

    /** A customer from a form of his own, billed through the account that he belongs to where nobody is named for himself. */
    public Optional<Customer> customer(Form form) {
        return payers().customer(form);
    }

    private CustomerForms payers() {
        return new CustomerForms(finder);
    }

    /** What forms say, by their kinds; what is wrong with them is collected here too. */
    public FormContents contents() {
        return new FormContents(settings.shop(), problems);
    }

    /** Reads an agreement as it is after all that happened to it; empty also while the shop has problems. */
    public Optional<AgreementRequest> agreement(Form form) {
        return contents().agreement(form).flatMap(request -> problems.take(book.stepsOf(request.number()))
                .map(steps -> steps.after(request, shop().orElseThrow().currency())));
    }

    /** For sites and machines that stand in no file; what is wrong with them is collected here too. */
    public StoredForms forms() {
        return sites().stored();
    }

    /** The same for customers. */
    public StoredCustomers customers() {
        return payers().stored();
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

    /** The visits that the book has of a site, but those that were withdrawn; those handed over are no records. */
    List<Visit> visitsAt(String site) {
        return problems.take(book.visitsAt(site)).orElse(List.of()).stream()
                .flatMap(form -> contents().visit(form).stream()).toList();
    }

    /** What was sold ahead at a site and billed, the oldest first. */
    List<SoldAhead> soldAhead(String site) {
        return problems.take(book.soldAhead(site)).orElse(List.of());
    }

    /** Visits of a site that answered calls and are neither withdrawn nor given back. */
    List<Visit> answeredCalls(String site) {
        return problems.take(book.answeredCalls(site)).stream().flatMap(List::stream)
                .flatMap(form -> contents().visit(form).stream()).toList();
    }

    /** Whether what is to be quoted is maintenance; otherwise it is a planned visit. What is wrong shows when it is read. */
    public boolean isMaintenance(FormName name) {
        return with(finder.given())
                .form(name, List.of(FormKind.PLANNED_VISIT, FormKind.VISIT, FormKind.MAINTENANCE_REQUEST))
                .flatMap(Form::kind).filter(kind -> kind == FormKind.MAINTENANCE_REQUEST).isPresent();
    }

    /** The form of a customer's account: one that was given, else the book's. */
    Optional<Form> accountForm(String customer, Supplier<Optional<Form>> stored) {
        return finder.given(FormKind.ACCOUNT, customer).or(stored);
    }
}
