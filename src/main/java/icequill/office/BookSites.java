package icequill.office;

import icequill.files.ShopFolder;
import icequill.files.SiteSource;
import icequill.ledger.CustomerEntry;
import icequill.ledger.MachineEntry;
import icequill.ledger.Reading;
import icequill.ledger.SiteEntry;
import icequill.party.Customer;
import icequill.problem.Checked;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** The sites of a shop's book. */
record BookSites(ShopBook book) implements SiteSource {

    /** The shop folder; sites that have no file there are looked for in the book. */
    static ShopFolder shop(Path folder) {
        return ShopFolder.read(folder, new BookSites(ShopBook.of(folder, Clock.systemUTC())));
    }

    @Override
    public Checked<Optional<Stored>> site(String id) {
        return book.exists() ? book.read(reading -> site(reading, id)) : Checked.sound(Optional.empty());
    }

    @Override
    public Checked<List<String>> ids() {
        return book.exists()
                ? book.read(reading -> Checked.sound(reading.entries().sites().stream().map(SiteEntry::id).toList()))
                : Checked.sound(List.of());
    }

    /** A site within a reading of the book. */
    static Checked<Optional<Stored>> site(Reading reading, String id) {
        return reading.entries().site(id) instanceof Checked.Sound<SiteEntry>(SiteEntry site)
                ? reading.entries().customer(site.customer()).then(payer -> stored(reading, site, payer))
                : Checked.sound(Optional.empty());
    }

    private static Checked<Optional<Stored>> stored(Reading reading, SiteEntry site, CustomerEntry payer) {
        return payer.forgotten().isPresent()
                ? Checked.faulty(new Problem(Code.NOT_ALLOWED, Place.NOWHERE,
                        "the customer of site " + site.id() + " was forgotten on " + payer.forgotten().get(), ""))
                : customer(reading, payer).map(customer -> Optional.of(new Stored(customer, site.data(),
                        reading.entries().machinesOf(site.id()).stream().map(MachineEntry::data).toList())));
    }

    /** The customer, billed through the parent account where nobody is named for himself. */
    static Checked<Customer> customer(Reading reading, CustomerEntry entry) {
        return entry.parent().isPresent() && entry.customer().billTo().entries().isEmpty()
                ? reading.entries().customer(entry.parent().get()).then(parent -> customer(reading, parent))
                        .map(parent -> entry.customer().billed(parent.billTo()))
                : Checked.sound(entry.customer());
    }
}
