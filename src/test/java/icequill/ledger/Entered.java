package icequill.ledger;

import icequill.ledger.entries.AccountEntry;
import icequill.ledger.entries.CustomerEntry;
import icequill.ledger.entries.LifeStep;
import icequill.ledger.entries.MachineEntry;
import icequill.ledger.entries.PaymentEntry;
import icequill.ledger.entries.Register;
import icequill.ledger.entries.SiteEntry;
import icequill.ledger.entries.VisitEntry;
import icequill.money.Amounts;
import icequill.party.Acceptance;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Language;
import icequill.party.MailWishes;
import icequill.party.Period;
import icequill.party.Timeline;
import icequill.problem.Place;
import icequill.problem.Validated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.money.CurrencyUnit;
import javax.money.Monetary;

/** Invented customers, sites, machines and a visit to enter into a book. */
public final class Entered {

    public static final Address LANE = new Address(List.of("4 Crumb Lane", "Rear door"), "Millbrook", "NY", "12545",
            "US");
    public static final Address OFFICE = new Address(List.of("88 Quarry Road"), "Fernhill", "NY", "12501", "US");

    private static final CurrencyUnit USD = Monetary.getCurrency("USD");

    private Entered() {
    }

    public static CustomerEntry group() {
        return CustomerEntry.of("oven-group", customer("Oven Group", Timeline.always(billTo("Oven Group", OFFICE))));
    }

    /** Its bill-to changes on 1 July 2026, from itself to its group. */
    public static CustomerEntry bakery() {
        LocalDate change = LocalDate.of(2026, 7, 1);
        Timeline<BillTo> billTo = new Timeline<>(List.of(
                new Timeline.Entry<>(new Period(LocalDate.MIN, Optional.of(change)), billTo("Crumb Lane Bakery", LANE),
                        Place.NOWHERE),
                new Timeline.Entry<>(new Period(change, Optional.empty()), billTo("Oven Group", OFFICE),
                        Place.NOWHERE)));
        return new CustomerEntry("crumb-lane", reached(customer("Crumb Lane Bakery", billTo)),
                Optional.of("oven-group"),
                Optional.empty());
    }

    public static SiteEntry site() {
        return new SiteEntry("crumb-lane-bakery", "crumb-lane", "Bakery", Optional.of("12"), LANE,
                Optional.of("millbrook"), "{\"parking\":\"rear\"}");
    }

    public static MachineEntry machine() {
        return new MachineEntry("crumb-lane-bakery", "flaker", "Flake ice machine", Optional.of("SN-4471"),
                Optional.of(LocalDate.of(2024, 3, 1)), 0, "{\"condition\":\"scaled\"}");
    }

    public static VisitEntry visit() {
        ZonedDateTime began = ZonedDateTime.parse("2026-05-13T09:00-04:00[America/New_York]");
        return new VisitEntry("spring-cleaning", "crumb-lane-bakery", began, began.plusMinutes(95),
                Optional.of("PO-4711"), false, "{\"approver\":\"J. Baker\"}");
    }

    /** Somebody says yes to a quote for the site. */
    public static LifeStep step(int position) {
        return new LifeStep("QUOTE", "MQ-2026-00001", position, "ACCEPTED", LocalDate.of(2026, 5, 14),
                Optional.of("crumb-lane-bakery"), Map.of("plan", "quarterly"), Map.of("name", "J. Baker"));
    }

    /** Adds it. */
    public static void accepted(Book book, int position) {
        book.write(transaction -> {
            transaction.lifeSteps().add(step(position));
            return Validated.valid(true);
        }).orElseThrow();
    }

    /** Enters all of it. */
    public static void all(Book book) {
        book.write(transaction -> {
            Register register = transaction.register();
            return register.add(group()).then(done -> register.add(bakery())).then(done -> register.add(site()))
                    .then(done -> register.add(machine())).then(done -> register.record(visit()))
                    .then(done -> Validated.valid(true));
        }).orElseThrow();
    }

    /** A payment of the group for a bill from before the book, and one that was withdrawn. */
    public static void paid(Book book) {
        LocalDate day = LocalDate.of(2026, 5, 14);
        PaymentEntry payment = new PaymentEntry("may", "oven-group", day, Amounts.of(BigDecimal.TEN, USD), "CHECK",
                false,
                Optional.of("check 2207"),
                List.of(new PaymentEntry.Share("A-1", day, Amounts.of(BigDecimal.ONE, USD))));
        PaymentEntry slip = new PaymentEntry("slip", "oven-group", day, Amounts.of(BigDecimal.TWO, USD), "CASH", false,
                Optional.empty(), List.of());
        book.write(open -> open.receiving()
                .note(new AccountEntry("oven-group", "{\"invoices\":[{\"number\":\"A-1\"}]}"))
                .then(noted -> open.receiving().record(payment)).then(done -> open.receiving().record(slip))
                .then(done -> open.receiving().withdraw(slip, "twice"))).orElseThrow();
    }

    /** The group, which may take so many days to pay. */
    public static CustomerEntry group(int paymentDays) {
        Customer group = group().customer();
        return CustomerEntry.of("oven-group",
                new Customer(group.name(), group.language(), group.billTo(), group.vendorNumber(),
                        Optional.of(paymentDays), group.claimsExemption(), group.certificates(), group.accepted(),
                        group.contacts(), group.notes(), group.mail()));
    }

    private static Customer customer(String name, Timeline<BillTo> billTo) {
        return new Customer(name, Optional.of(Language.ENGLISH), billTo, Optional.of("V-3310"), Optional.of(20), true,
                List.of(new Certificate(Certificate.Kind.RESALE, "RC-1", "NY", "resale", LocalDate.of(2026, 1, 5),
                        Optional.of(LocalDate.of(2028, 12, 31)), Place.NOWHERE)),
                Optional.of(new Acceptance(LocalDate.of(2026, 1, 4), "price sheet of 2026")), Contacts.NONE,
                Optional.empty(), MailWishes.USUAL);
    }

    private static Customer reached(Customer customer) {
        Contacts contacts = new Contacts(Optional.of("845-555-0117"), List.of(
                new Contact("Jo Baker", Optional.of("owner"), Set.of(Contact.Purpose.BILLS, Contact.Purpose.APPROVALS),
                        Optional.of("845-555-0118"), Optional.of("jo@crumb.example")),
                new Contact("Night shift", Optional.empty(), Set.of(), Optional.empty(), Optional.empty())));
        return new Customer(customer.name(), customer.language(), customer.billTo(), customer.vendorNumber(),
                customer.paymentDays(), customer.claimsExemption(), customer.certificates(), customer.accepted(),
                contacts, Optional.of("pays after a call"),
                new MailWishes(Set.of(Contact.Purpose.BILLS), true, true, List.of("w9", "insurance")));
    }

    private static BillTo billTo(String name, Address address) {
        return new BillTo(name, Optional.of("Accounts payable"), address, Optional.of("ap@example.com"),
                Optional.empty());
    }
}
