package icequill.shop;

import icequill.files.form.SiteSource;
import icequill.ledger.Reading;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.party.Customer;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** The sites of a shop's book. It remembers what it gave, so that whoever stores later can see whether that still holds. */
public final class BookSites implements SiteSource {

    private final ShopBook book;
    private final Map<String, Optional<Stored>> given = new LinkedHashMap<>();
    private final Map<String, Customer> payers = new LinkedHashMap<>();

    public BookSites(ShopBook book) {
        this.book = book;
    }

    /** A new reading of a shop's folder, whose sites come from the book where they have no file. */
    public static ShopFolder shop(ShopBook book) {
        return new BookSites(book).shop();
    }

    /** The folder of the book's shop, whose sites come from here where they have no file. */
    public ShopFolder shop() {
        return ShopFolder.of(book.folder(), book.rates().get(), this);
    }

    @Override
    public Checked<Optional<Stored>> site(String id) {
        Checked<Optional<Stored>> found = book.exists()
                ? book.read(reading -> site(reading, id))
                : Checked.sound(Optional.empty());
        return found.map(site -> {
            given.put(id, site);
            return site;
        });
    }

    /** A customer of the book, billed through the parent account where nobody is named for himself. */
    public Checked<Customer> payer(String id) {
        return book.read(reading -> payer(reading, id)).map(customer -> {
            payers.put(id, customer);
            return customer;
        });
    }

    /** Goes on when the book still says what was given here. */
    public <T> Checked<T> unchanged(Reading reading, Supplier<Checked<T>> next) {
        Problems problems = new Problems();
        given.forEach((id, before) -> problems.take(site(reading, id)).filter(now -> !now.equals(before))
                .ifPresent(now -> problems.add(changed("site \"" + id + "\" or its customer"))));
        payers.forEach((id, before) -> problems.take(payer(reading, id)).filter(now -> !now.equals(before))
                .ifPresent(now -> problems.add(changed("customer \"" + id + "\""))));
        return problems.or(() -> book).then(same -> next.get());
    }

    public static Problem changed(String what) {
        return new Problem(Code.CHANGED_MEANWHILE, Place.NOWHERE,
                what + " was changed by somebody else while this was worked out, so nothing was stored",
                "the same again, which looks at it anew");
    }

    private static Checked<Customer> payer(Reading reading, String id) {
        return reading.entries().customer(id).found().map(entry -> customer(reading, entry))
                .orElseGet(() -> Checked.faulty(UnknownName.name("customer", id,
                        reading.entries().customers().stream().map(CustomerEntry::id).toList(),
                        "see: icequill customer list")));
    }

    @Override
    public Checked<List<String>> ids() {
        return book.exists()
                ? book.read(reading -> Checked.sound(reading.entries().sites().stream().map(SiteEntry::id).toList()))
                : Checked.sound(List.of());
    }

    /** A site within a reading of the book. */
    static Checked<Optional<Stored>> site(Reading reading, String id) {
        return reading.entries().siteNow(id) instanceof Checked.Sound<SiteEntry>(SiteEntry site)
                ? reading.entries().customer(site.customer()).then(payer -> stored(reading, site, payer))
                : Checked.sound(Optional.empty());
    }

    private static Checked<Optional<Stored>> stored(Reading reading, SiteEntry site, CustomerEntry payer) {
        return payer.forgotten().isPresent()
                ? Checked.faulty(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the customer of site " + site.id() + " was forgotten on " + payer.forgotten().get(), ""))
                : customer(reading, payer).map(customer -> Optional.of(new Stored(site.id(), customer, site.data(),
                        reading.entries().machinesOf(site.id()).stream().map(MachineEntry::data).toList())));
    }

    /** The customer, billed through the parent account where nobody is named for himself. */
    static Checked<Customer> customer(Reading reading, CustomerEntry entry) {
        return entry.parent().isPresent() && entry.customer().billTo().entries().isEmpty()
                ? reading.entries().customer(entry.parent().get()).then(parent -> customer(reading, parent))
                        .map(parent -> entry.customer().billed(parent.addressed()))
                : Checked.sound(entry.customer());
    }
}
