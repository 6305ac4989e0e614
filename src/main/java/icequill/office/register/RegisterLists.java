package icequill.office.register;

import icequill.answer.EntrySheet;
import icequill.answer.register.CustomerList;
import icequill.answer.register.MachineList;
import icequill.answer.register.SiteList;
import icequill.ledger.entries.SiteEntry;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;

/** Shows and lists the customers, sites and machines of the book. */
public final class RegisterLists {

    private final ShopBook book;

    private RegisterLists(ShopBook book) {
        this.book = book;
    }

    public static RegisterLists of(Path folder, Clock clock) {
        return new RegisterLists(ShopBook.of(folder, clock));
    }

    /** A customer, with his sites. */
    public Validated<EntrySheet> customer(String id) {
        return book.read(open -> RegisterOffice.payer(open, Optional.of(id))
                .map(new EntrySheets(open)::of));
    }

    /** A site, with its machines. */
    public Validated<EntrySheet> site(String id) {
        return book.read(open -> RegisterOffice.found(open, id).map(new EntrySheets(open)::of));
    }

    /** A machine of a site. */
    public Validated<EntrySheet> machine(String site, String id) {
        return book
                .read(open -> RegisterOffice.found(open, site)
                        .then(entry -> open.entries().machine(site, id).found()
                                .map(machine -> Validated.valid(new EntrySheets(open).of(machine)))
                                .orElseGet(() -> Validated.invalid(UnknownName.name("machine at " + site, id,
                                        RegisterOffice.machines(open, site).keySet(),
                                        "see: icequill machine list " + site)))));
    }

    /** The customers that have a text somewhere; all for no letters. */
    public Validated<CustomerList> customers(String text) {
        return book.read(open -> Validated.valid(new CustomerList(open.entries().customers().stream()
                .map(entry -> new CustomerList.Row(entry.id(), entry.customer().name(), entry.parent(),
                        open.entries().sitesOf(entry.id()).stream().map(SiteEntry::id).toList()))
                .toList()).with(text)));
    }

    /** The sites that have a text somewhere; all for no letters. */
    public Validated<SiteList> sites(String text) {
        return book.read(open -> Validated.valid(new SiteList(open.entries().sites().stream()
                .map(entry -> new SiteList.Row(entry.id(), entry.name(), entry.storeNumber(), entry.customer(),
                        entry.address().city()))
                .toList()).with(text)));
    }

    /** The machines that have a text somewhere; all for no letters. */
    public Validated<MachineList> machines(String text) {
        return book.read(open -> Validated.valid(new MachineList(open.entries().machines().stream()
                .map(entry -> new MachineList.Row(entry.site(), entry.id(), entry.model(), entry.serial()))
                .toList()).with(text)));
    }
}
