package icequill.office.register;

import icequill.answer.EntrySheet;
import icequill.answer.register.ContactList;
import icequill.answer.register.CustomerList;
import icequill.answer.register.MachineList;
import icequill.answer.register.SiteList;
import icequill.explain.ConstantKey;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.ledger.entries.AgreementEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.RequestEntry;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.ledger.entries.VisitQuestion;
import icequill.party.Contact;
import icequill.problem.Validated;
import icequill.shop.BookedCalls;
import icequill.shop.ShopBook;
import icequill.shop.UnknownName;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Shows and lists the customers, sites and machines of the book. */
public final class RegisterLists {

    private final ShopBook book;

    private RegisterLists(ShopBook book) {
        this.book = book;
    }

    public static RegisterLists of(Path folder, Clock clock) {
        return of(ShopBook.of(folder, clock));
    }

    /** The same of a shop that is open already. */
    public static RegisterLists of(ShopBook book) {
        return new RegisterLists(book);
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
        return book.read(open -> {
            Map<String, String> payers = open.entries().customers().stream()
                    .collect(Collectors.toMap(CustomerEntry::id, entry -> entry.customer().name()));
            return Validated.valid(new SiteList(open.entries().sites().stream()
                    .map(entry -> new SiteList.Row(entry.id(), entry.name(), entry.storeNumber(), entry.customer(),
                            payers.getOrDefault(entry.customer(), ""), String.join(", ", entry.address().lines()),
                            entry.address().city()))
                    .toList()).with(text));
        });
    }

    /**
     * The names by which the book knows its entries.
     *
     * @param kind customer, site, visit, agreement, or quoted for what a quote can be made of; none are known of others
     */
    public Validated<List<String>> names(String kind) {
        return book.read(open -> Validated.valid(switch (kind) {
        case "customer" -> open.entries().customers().stream().map(CustomerEntry::id).toList();
        case "site" -> open.entries().sites().stream().map(SiteEntry::id).toList();
        case "call" -> BookedCalls.ids(open);
        case "visit" -> open.entries().visits(VisitQuestion.ALL).stream().map(VisitEntry::id).toList();
        case "agreement" -> open.entries().agreements().stream().map(AgreementEntry::id).toList();
        case "quoted" -> Stream.concat(
                open.entries().requests(FormKind.MAINTENANCE_REQUEST.key()).stream().map(RequestEntry::id),
                open.entries().plannedVisits().stream().map(VisitEntry::id)).toList();
        default -> List.of();
        }));
    }

    /** The contacts that have a text somewhere; all for no letters. */
    public Validated<ContactList> contacts(String text) {
        return book.read(open -> Validated.valid(new ContactList(Stream.concat(
                open.entries().customers().stream()
                        .flatMap(entry -> contacts("customer", entry.id(), entry.customer().contacts().people())),
                open.entries().sites().stream()
                        .flatMap(entry -> contacts("site", entry.id(), StoredForms.contacts(entry.data()))))
                .toList()).with(text)));
    }

    private static Stream<ContactList.Row> contacts(String kind, String id, List<Contact> contacts) {
        return contacts.stream().map(contact -> new ContactList.Row(kind, id, contact.name(), contact.role(),
                contact.purposes().stream().sorted().map(ConstantKey::of).toList(), contact.telephone(),
                contact.email()));
    }

    /** The machines that have a text somewhere; all for no letters. */
    public Validated<MachineList> machines(String text) {
        return book.read(open -> Validated.valid(new MachineList(open.entries().machines().stream()
                .map(entry -> new MachineList.Row(entry.site(), entry.id(), entry.model(), entry.serial()))
                .toList()).with(text)));
    }
}
