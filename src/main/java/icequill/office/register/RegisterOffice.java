package icequill.office.register;

import icequill.answer.EntryFlag;
import icequill.answer.EntrySheet;
import icequill.answer.ForgetResult;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Column;
import icequill.ledger.Reading;
import icequill.ledger.Transaction;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.office.billing.PendingWrite;
import icequill.party.Contact;
import icequill.party.Customer;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import icequill.shop.BookForms;
import icequill.shop.EntryId;
import icequill.shop.EntryRows;
import icequill.shop.GlyphCheck;
import icequill.shop.ShopBook;
import icequill.shop.ShopDay;
import icequill.shop.ShopFolder;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The office that keeps the book's customers, sites and machines. */
public final class RegisterOffice {

    private final Path folder;
    private final ShopBook book;
    private final Clock clock;

    private RegisterOffice(ShopBook book) {
        this.folder = book.folder();
        this.book = book;
        this.clock = book.clock();
    }

    public static RegisterOffice of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static RegisterOffice of(ShopBook book) {
        return new RegisterOffice(book);
    }

    /**
     * Adds or changes a customer.
     *
     * @param parent the account that he belongs to; empty to leave it
     * @param from the day from which another is billed; empty to correct who is billed now
     */
    public Validated<EntrySheet> customer(EntryChange wish, Optional<String> parent, Optional<LocalDate> from) {
        ShopFolder shop = BookForms.shop(book);
        return write(wish, open -> customer(shop, open, wish, parent, from));
    }

    private Validated<EntrySheet> customer(ShopFolder shop, Transaction open, EntryChange wish,
            Optional<String> parent, Optional<LocalDate> from) {
        Optional<CustomerEntry> before = open.entries().customer(wish.id()).found();
        return standing(open, "customer", wish).then(stands -> known("customer", wish, before.isPresent(),
                ids(open.entries().customers()))).then(valid -> {
                    boolean ofAccount = parent.isPresent() || before.flatMap(CustomerEntry::parent).isPresent();
                    Optional<Customer> customer = shop.customers().customer(
                            EntryFlag.values(wish.flags(), Column.CUSTOMER), Place.NOWHERE,
                            before.map(CustomerEntry::customer), from, ShopDay.today(folder, clock), ofAccount);
                    return GlyphCheck.report(shop, new Problems()).or(customer::orElseThrow)
                            .then(right -> new EntryRows(open).customer(wish.id(), right, parent))
                            .map(entry -> EntrySheet.of("customer", entry.id(), EntryForms.customer(entry)));
                });
    }

    /**
     * Adds or changes a site.
     *
     * @param customer who pays, by id; empty to leave it
     */
    public Validated<EntrySheet> site(EntryChange wish, Optional<String> customer) {
        ShopFolder shop = BookForms.shop(book);
        return write(wish, open -> site(shop, open, wish, customer));
    }

    private Validated<EntrySheet> site(ShopFolder shop, Transaction open, EntryChange wish,
            Optional<String> customer) {
        Optional<SiteEntry> before = open.entries().site(wish.id()).found();
        return standing(open, "site", wish)
                .then(stands -> known("site", wish, before.isPresent(),
                        open.entries().sites().stream().map(SiteEntry::id).toList()))
                .then(valid -> payer(open, customer.or(() -> before.map(SiteEntry::customer))))
                .then(payer -> whole(shop, site(shop, open, wish, payer))
                        .then(whole -> new EntryRows(open).site(payer.id(), whole)))
                .map(new EntrySheets(open)::of);
    }

    /** Changes the contacts of a customer. */
    public Validated<EntrySheet> customerContact(String customer, ContactChange change) {
        ShopFolder shop = BookForms.shop(book);
        return book.write(open -> payer(open, Optional.of(customer))
                .then(entry -> contacts(entry.id(), entry.customer().contacts().people(), change))
                .then(wish -> customer(shop, open, wish, Optional.empty(), Optional.empty())));
    }

    /** Changes the contacts of a site. */
    public Validated<EntrySheet> siteContact(String site, ContactChange change) {
        ShopFolder shop = BookForms.shop(book);
        return book.write(open -> found(open, site)
                .then(entry -> contacts(entry.id(), StoredForms.contacts(entry.data()), change))
                .then(wish -> site(shop, open, wish, Optional.empty())));
    }

    private static Validated<EntryChange> contacts(String id, List<Contact> contacts, ContactChange change) {
        return change.over(contacts)
                .map(changed -> new EntryChange(id, false, Map.of("--contacts", changed)));
    }

    private static Optional<StoredForms.Whole> site(ShopFolder shop, Reading open, EntryChange wish,
            CustomerEntry payer) {
        return shop.forms().site(wish.id(), Optional.of(payer.customer()),
                EntryFlag.values(wish.flags(), Column.SITE), Place.NOWHERE,
                open.entries().site(wish.id()).found().map(SiteEntry::data),
                machines(open, wish.id()), List.of());
    }

    /** A customer of the book, or who is near. */
    public static Validated<CustomerEntry> payer(Reading open, Optional<String> id) {
        if (id.isEmpty()) {
            return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, "who pays is missing",
                    "--customer with a customer of the book"));
        }
        return open.entries().customer(id.get()).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(open.entries().merged("customer", id.get())
                        .orElseGet(() -> UnknownName.name("customer", id.get(), ids(open.entries().customers()),
                                "add it first: icequill customer add"))));
    }

    /** Adds or changes a machine of a site. */
    public Validated<EntrySheet> machine(String site, EntryChange wish) {
        ShopFolder shop = BookForms.shop(book);
        return write(wish, open -> found(open, site).then(entry -> {
            Map<String, String> machines = machines(open, site);
            return known("machine at " + site, wish, machines.containsKey(wish.id()), machines.keySet())
                    .then(valid -> open.entries().customer(entry.customer()))
                    .then(payer -> whole(shop, shop.forms().site(site, Optional.of(payer.customer()), Map.of(),
                            Place.NOWHERE, Optional.of(entry.data()), machines,
                            List.of(new StoredForms.Given(wish.id(),
                                    EntryFlag.values(wish.flags(), Column.MACHINE), Place.NOWHERE))))
                            .then(whole -> new EntryRows(open).site(entry.customer(), whole)))
                    .then(stored -> open.entries().machine(site, wish.id()))
                    .map(new EntrySheets(open)::of);
        }));
    }

    /** A site of the book, or which is near. */
    public static Validated<SiteEntry> found(Reading open, String site) {
        return open.entries().site(site).found().map(Validated::valid)
                .orElseGet(() -> Validated.invalid(open.entries().merged("site", site)
                        .orElseGet(() -> UnknownName.name("site", site,
                                open.entries().sites().stream().map(SiteEntry::id).toList(),
                                "see: icequill site list"))));
    }

    /** Blanks what is personal about a customer, as far as it need not be kept. */
    public Validated<ForgetResult> forget(String id) {
        return forgetting(id).then(PendingWrite::done);
    }

    /** What {@link #forget} would blank, of which nothing is blanked yet. */
    public Validated<ForgetResult> wouldForget(String id) {
        return forgetting(id).then(PendingWrite::tried);
    }

    private Validated<PendingWrite<ForgetResult>> forgetting(String id) {
        return book.read(open -> Validated.valid(new PendingWrite<>(book,
                writing -> payer(writing, Optional.of(id)).then(
                        entry -> new Forgetting(folder, book.settings(), writing).forget(entry,
                                ShopDay.today(folder, clock))))));
    }

    static Map<String, String> machines(Reading open, String site) {
        Map<String, String> machines = new LinkedHashMap<>();
        open.entries().machinesOf(site).forEach(machine -> machines.put(machine.id(), machine.data()));
        return machines;
    }

    private Validated<StoredForms.Whole> whole(ShopFolder shop, Optional<StoredForms.Whole> read) {
        Problems problems = new Problems();
        read.flatMap(whole -> whole.site().taxPlace()).flatMap(
                place -> taxPlace(shop, place, new Place("", 0, "taxPlace"), ShopDay.today(folder, clock)))
                .ifPresent(problems::add);
        return GlyphCheck.report(shop, problems).or(read::orElseThrow);
    }

    /** A problem when the rates do not know a tax place. */
    static Optional<Problem> taxPlace(ShopFolder shop, String id, Place asked, LocalDate day) {
        return shop.taxes().flatMap(rules -> rules.at(day, Optional.of(id), asked).problems().stream().findFirst());
    }

    private static List<String> ids(Collection<CustomerEntry> customers) {
        return customers.stream().map(CustomerEntry::id).toList();
    }

    private static Validated<EntryChange> standing(Reading open, String kind, EntryChange wish) {
        return open.entries().merged(kind, wish.id()).<Validated<EntryChange>>map(Validated::invalid)
                .orElseGet(() -> Validated.valid(wish));
    }

    private static Validated<EntryChange> known(String kind, EntryChange wish, boolean there, Collection<String> all) {
        if (wish.isNew() == there) {
            return Validated.invalid(there
                    ? new Problem(Code.ALREADY_EXISTS, Place.NOWHERE,
                            "the book has a " + kind + " \"" + wish.id() + "\" already", "another id, or: change")
                    : UnknownName.name(kind, wish.id(), all, "to add it: add"));
        }
        return Validated.valid(wish);
    }

    private <T> Validated<T> write(EntryChange wish, Function<Transaction, Validated<T>> work) {
        return EntryId.problem(wish.id(), Place.NOWHERE).<Validated<T>>map(Validated::invalid)
                .orElseGet(() -> book.write(work));
    }
}
