package icequill.shop;

import icequill.account.AccountOf;
import icequill.account.ReminderTerms;
import icequill.agreement.Earning;
import icequill.agreement.NoticeRules;
import icequill.files.form.AccountReader;
import icequill.files.form.AgreementReader;
import icequill.files.form.BrushingReader;
import icequill.files.form.CreditReader;
import icequill.files.form.PlanRequestReader;
import icequill.files.form.SiteHistoryReader;
import icequill.files.form.SiteReader;
import icequill.files.form.SiteSource;
import icequill.files.form.StoredForms;
import icequill.files.form.VisitReader;
import icequill.files.pricing.PricingReader;
import icequill.files.yaml.Fields;
import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.Tree;
import icequill.files.yaml.TreeJson;
import icequill.files.yaml.YamlReader;
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
import icequill.rates.RateSchedule;
import icequill.request.AgreementRequest;
import icequill.request.BrushingRequest;
import icequill.request.CreditRequest;
import icequill.request.PlanRequest;
import icequill.tax.TaxPlace;
import icequill.tax.TaxRules;
import icequill.work.Visit;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One reading of a shop folder. What is asked for is read; whatever is wrong is collected, and {@link #problems} gives it
 * all. For one run and one thread.
 */
public final class ShopFolder {

    private final Path folder;
    private final ShopSettings settings;
    private final Problems problems = new Problems();
    private final FolderFiles files;
    private final List<ShopText> texts;
    private final SiteSource beyond;

    private ShopFolder(Path folder, ShopSettings settings, SiteSource beyond) {
        this.folder = folder;
        this.settings = settings;
        this.beyond = beyond;
        this.files = new FolderFiles(folder, problems);
        this.texts = new ArrayList<>(settings.texts());
        problems.addAll(settings.problems());
    }

    /** Reads shop.yaml and pricing/ of a shop whose sites all have files. */
    public static ShopFolder read(Path folder) {
        return of(folder, ShopSettings.read(folder), SiteSource.NONE);
    }

    /**
     * A reading that begins with what was read of shop.yaml and pricing/.
     *
     * @param beyond where to look for sites that have no file in sites/
     */
    static ShopFolder of(Path folder, ShopSettings settings, SiteSource beyond) {
        return new ShopFolder(folder, settings, beyond);
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
        Shop own = settings.shop().orElseThrow();
        boolean atShop = own.sourcing() == Sourcing.SHOP;
        Place asked = place(atShop ? ShopSettings.SHOP : "sites/" + site.id() + FolderFiles.YAML, "taxPlace");
        return taxes().flatMap(
                rules -> beyond.take(rules.at(day, atShop ? own.taxPlace() : site.taxPlace(), asked)));
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
        Path file = folder.resolve("sites").resolve(id + FolderFiles.YAML);
        return Files.exists(file)
                ? fields(file, "site").flatMap(fields -> new SiteReader(fields, siteKinds()).read(id))
                : problems.take(beyond.site(id)).flatMap(stored -> stored.isPresent()
                        ? forms().site(stored.get())
                        : unknown(id, asked));
    }

    /** For customers, sites and machines that stand in no file; what is wrong with them is collected here too. */
    public StoredForms forms() {
        return new StoredForms(siteKinds(), problems, this::noted);
    }

    private Optional<Site> unknown(String id, Place asked) {
        List<String> known = new ArrayList<>(files.of("sites").stream().map(FolderFiles::nameOf).toList());
        problems.take(beyond.ids()).ifPresent(known::addAll);
        problems.add(Problem.unknownName(asked, "site", id, known));
        return Optional.empty();
    }

    /** Reads a visit, empty also while the shop has problems; the file need not lie in the folder. */
    public Optional<Visit> visit(Path file) {
        return fields(file, "visit")
                .flatMap(
                        fields -> settings.shop()
                                .flatMap(found -> new VisitReader(fields, found).read(FolderFiles.nameOf(file))));
    }

    /** A visit's file in the form in which it is stored; empty where it cannot be read at all. */
    public Optional<String> stored(Path visit) {
        return YamlReader.read(visit, files.shown(visit), new Problems())
                .flatMap(tree -> tree instanceof Tree.Branch branch
                        ? Optional.of(TreeJson.text(branch))
                        : Optional.empty());
    }

    /**
     * Reads a site's file for the book.
     *
     * @param id the name that it gets
     */
    public Optional<StoredForms.Whole> siteFile(Path file, String id) {
        return fields(file, "site").flatMap(fields -> new SiteReader(fields, siteKinds()).read(id)
                .map(site -> StoredForms.whole(site, fields.branch())));
    }

    /** Reads a customer's file, with the keys that a site's file has below {@code customer}. */
    public Optional<Customer> customerFile(Path file) {
        return YamlReader.read(file, files.shown(file), problems)
                .flatMap(tree -> tree instanceof Tree.Branch branch ? forms().customer(branch) : Optional.empty());
    }

    /**
     * Reads a visit that stands in no file.
     *
     * @param text in the form of a visit's file
     */
    public Optional<Visit> visitOf(String text, String id) {
        return checked(noted(YamlReader.parse(text, "the book's visit " + id, problems)), "visit")
                .flatMap(fields -> settings.shop().flatMap(found -> new VisitReader(fields, found).read(id)));
    }

    /** Reads a request for a credit note; the file need not lie in the folder. */
    public Optional<CreditRequest> credit(Path file) {
        return fields(file, "credit").flatMap(CreditReader::read);
    }

    /** The ids of all sites. */
    public List<String> sites() {
        return files.of("sites").stream().map(FolderFiles::nameOf).toList();
    }

    /** The files of all visits, by name. */
    public List<Path> visits() {
        return files.of("visits");
    }

    /** The files of all requests for credit notes, by name; a shop need not have any. */
    public List<Path> credits() {
        return files.ifThere("credits");
    }

    /** The files of all that is to be quoted, planned visits and maintenance, by name; a shop need not have any. */
    public List<Path> quotes() {
        return files.ifThere("quotes");
    }

    /** Whether a file that is to be quoted asks for maintenance; otherwise it is a planned visit. Faults show when it is read. */
    public boolean isMaintenance(Path file) {
        return says(file, "kind", "maintenance");
    }

    /** Reads a request for a maintenance quote, empty also while the shop has problems. */
    public Optional<PlanRequest> maintenance(Path file) {
        return fields(file, "maintenance")
                .flatMap(fields -> settings.shop().flatMap(found -> PlanRequestReader.read(fields, found)));
    }

    /** Reads what a request for a maintenance quote tells of its site for a forecast, empty also while the shop has problems. */
    public Optional<SiteHistory> history(Path file) {
        return fields(file, "maintenance")
                .flatMap(fields -> settings.shop().map(found -> SiteHistoryReader.read(fields, found)));
    }

    /** Reads an agreement, empty also while the shop has problems. */
    public Optional<AgreementRequest> agreement(Path file) {
        return fields(file, "agreement")
                .flatMap(fields -> settings.shop().flatMap(found -> new AgreementReader(fields, found).read()));
    }

    /** The files of all agreements, by name; a shop need not have any. */
    public List<Path> agreements() {
        return files.ifThere("agreements");
    }

    /** The files of agreements that name a site; faults of others are nothing to its visits. */
    public List<Path> agreementsOf(String site) {
        return agreements().stream().filter(file -> says(file, "site", site)).toList();
    }

    /** Whether a file has a value under a key; faults of the file show when it is read. */
    private boolean says(Path file, String key, String value) {
        return YamlReader.read(file, files.shown(file), new Problems())
                .flatMap(tree -> tree instanceof Tree.Branch branch
                        ? new Fields(branch, new Problems()).text(key)
                        : Optional.empty())
                .filter(value::equals).isPresent();
    }

    /** Reads a request for a brushing sheet, empty also while the shop has problems. */
    public Optional<BrushingRequest> brushing(Path file) {
        return fields(file, "brushing")
                .flatMap(fields -> settings.shop().flatMap(found -> BrushingReader.read(fields, found)));
    }

    /** The files of all requests for brushing sheets, by name; a shop need not have any. */
    public List<Path> brushings() {
        return files.ifThere("brushing");
    }

    /** Reads a customer's account, empty also while the shop has problems; the file need not lie in the folder. */
    public Optional<AccountOf> account(Path file) {
        return fields(file, "account")
                .flatMap(fields -> settings.shop()
                        .flatMap(found -> new AccountReader(fields, found).read(FolderFiles.nameOf(file))));
    }

    /** The files of all accounts, by name; a shop need not have any. */
    public List<Path> accounts() {
        return files.ifThere("accounts");
    }

    /** The files of all visits that are planned, by name; a shop need not have any. */
    public List<Path> planned() {
        return files.ifThere("planned");
    }

    private Optional<Fields> fields(Path file, String schema) {
        return checked(tree(file), schema);
    }

    private Optional<Fields> checked(Optional<Tree> read, String schema) {
        return read.flatMap(tree -> Fields.checked(tree, "/icequill/schema/" + schema + ".schema.json", problems));
    }

    private Optional<Tree> tree(Path file) {
        return noted(YamlReader.read(file, files.shown(file), problems));
    }

    private Optional<Tree> noted(Optional<Tree> tree) {
        tree.ifPresent(this::noted);
        return tree;
    }

    private void noted(Tree tree) {
        texts.addAll(ShopText.all(tree));
    }
}
