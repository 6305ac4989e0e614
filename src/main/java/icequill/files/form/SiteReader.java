package icequill.files.form;

import icequill.files.yaml.Fields;
import icequill.files.yaml.Names;
import icequill.files.yaml.Tree;
import icequill.party.Acceptance;
import icequill.party.AccessHours;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Certificate;
import icequill.party.Circumstance;
import icequill.party.Conditions;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.party.Customer;
import icequill.party.Layout;
import icequill.party.Machine;
import icequill.party.MailWishes;
import icequill.party.Site;
import icequill.party.SiteKind;
import icequill.party.SiteKinds;
import icequill.party.Timeline;
import icequill.party.Wording;
import icequill.problem.Code;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes a site from its file. */
public final class SiteReader {

    /** Stands for a customer who has problems of his own, so that those of the site are found too. */
    public static final Customer UNKNOWN = new Customer("", Optional.empty(), new Timeline<>(List.of()),
            Optional.empty(),
            Optional.empty(), false, List.of(), Optional.empty(), Contacts.NONE, Optional.empty(), MailWishes.USUAL);

    /** Stands for a kind that there is none of, which was reported. */
    private static final SiteKind NO_KIND = new SiteKind("", Wording.same(""), Set.of());

    private final Fields fields;
    private final SiteKinds kinds;

    public SiteReader(Fields fields, SiteKinds kinds) {
        this.fields = fields;
        this.kinds = kinds;
    }

    /**
     * Empty when something needed is missing or wrong, which is then reported.
     *
     * @param customer who pays
     */
    public Optional<Site> read(String id, Customer customer) {
        Optional<Address> address = fields.child("address").flatMap(ShopReader::address);
        List<Machine> machines = machines();
        if (address.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Site(id, customer, List.of(), fields.text("name").orElse(""), fields.text("storeNumber"),
                address.get(), kind(),
                fields.child("conditions").map(SiteReader::conditions).orElse(Conditions.UNKNOWN),
                fields.number("miles").orElse(BigDecimal.ZERO), fields.text("taxPlace"),
                fields.child("access").flatMap(SiteReader::access), season(),
                Set.copyOf(fields.constants("closed", DayOfWeek.class)), fields.text("parking"),
                fields.text("roof"),
                machines, fields.child("layout").map(layout -> new LayoutReader(layout, fields.ids("machines")).read())
                        .orElse(Layout.USUAL),
                circumstances(fields), contacts(fields), fields.text("notes")));
    }

    /** What makes planned visits dearer, as sites and requests for plans name it. */
    static List<Circumstance> circumstances(Fields fields) {
        return fields.children("modifiers").stream()
                .flatMap(entry -> entry.id("modifier").map(modifier -> new Circumstance(modifier,
                        entry.number("amount").orElse(BigDecimal.ONE), entry.id("machine"),
                        entry.constant("each", Circumstance.Each.class).orElse(Circumstance.Each.VISIT),
                        entry.place("modifier"))).stream())
                .toList();
    }

    private static Conditions conditions(Fields entry) {
        return new Conditions(entry.integer("makersMonths"), entry.number("hardness"),
                Set.copyOf(entry.constants("air", Conditions.Air.class)));
    }

    private SiteKind kind() {
        return fields.id("kind").flatMap(id -> fields.problems().take(kinds.named(id, fields.place("kind"))))
                .orElse(NO_KIND);
    }

    private Set<Month> season() {
        return fields.leaves("season").stream().flatMap(leaf -> Fields.constantOf(leaf.text(), Month.class).stream())
                .collect(Collectors.toSet());
    }

    private static Optional<AccessHours> access(Fields hours) {
        return hours.time("from").flatMap(from -> hours.end("until").map(until -> new AccessHours(from, until)));
    }

    /** Who pays; empty when something needed is missing or wrong, which is then reported. */
    static Optional<Customer> customer(Fields customer) {
        List<Timeline.Entry<BillTo>> entries = new ArrayList<>();
        customer.children("billTo").forEach(entry -> billTo(entry).ifPresent(entries::add));
        Optional<Timeline<BillTo>> billTo = customer.problems().take(Timeline.of(entries));
        return billTo.map(dated -> new Customer(customer.text("name").orElse(""),
                customer.language("language"), dated, customer.text("vendorNumber"),
                customer.integer("paymentDays"), customer.flag("claimsExemption"),
                customer.children("certificates").stream().flatMap(entry -> certificate(entry).stream()).toList(),
                customer.child("accepted").flatMap(entry -> entry.day("date")
                        .map(day -> new Acceptance(day, entry.text("paper").orElse("")))),
                contacts(customer), customer.text("notes"),
                customer.child("mail").map(SiteReader::mail).orElse(MailWishes.USUAL)));
    }

    private static MailWishes mail(Fields entry) {
        return new MailWishes(Set.copyOf(entry.constants("atOnce", Contact.Purpose.class)), entry.flag("bare"),
                entry.flag("data"), entry.leaves("enclosed").stream().map(Tree.Leaf::text).toList());
    }

    static Contacts contacts(Fields fields) {
        return new Contacts(fields.text("telephone"), fields.children("contacts").stream()
                .flatMap(entry -> entry.text("name").map(name -> new Contact(name, entry.text("role"),
                        Set.copyOf(entry.constants("for", Contact.Purpose.class)), entry.text("telephone"),
                        entry.text("email"))).stream())
                .toList());
    }

    private static Optional<Timeline.Entry<BillTo>> billTo(Fields entry) {
        Optional<LocalDate> from = entry.entries().containsKey("from")
                ? entry.day("from")
                : Optional.of(LocalDate.MIN);
        return billed(entry).flatMap(billTo -> from.flatMap(first -> entry.period(first))
                .map(period -> new Timeline.Entry<>(period, billTo, entry.place())));
    }

    /** Who is billed, without the days for which that holds. */
    static Optional<BillTo> billed(Fields entry) {
        return entry.child("address").flatMap(ShopReader::address)
                .map(address -> new BillTo(entry.text("name").orElse(""), entry.text("attention"), address,
                        entry.text("email"), entry.text("vatId")));
    }

    private static Optional<Certificate> certificate(Fields entry) {
        Optional<LocalDate> signed = entry.day("signed");
        Optional<LocalDate> expires = entry.day("expires");
        if (signed.isPresent() && expires.isPresent() && expires.get().isBefore(signed.get())) {
            entry.problems().add(Code.WRONG_ORDER, entry.place("expires"),
                    "expires on " + expires.get() + ", signed on " + signed.get(), "the later day last");
            return Optional.empty();
        }
        return entry.constant("kind", Certificate.Kind.class)
                .flatMap(kind -> signed.map(day -> new Certificate(kind, entry.text("number").orElse(""),
                        entry.text("state").orElse(""), entry.text("reason").orElse(""), day, expires, entry.place())));
    }

    private List<Machine> machines() {
        return Names.list(fields.children("machines"), SiteReader::machine);
    }

    private static Optional<Machine> machine(String id, Fields entry) {
        Optional<Machine.Make> make = entry.constant("make", Machine.Make.class);
        Optional<Machine.Form> form = entry.constant("form", Machine.Form.class);
        Optional<Machine.Cooling> cooling = entry.constant("cooling", Machine.Cooling.class);
        Optional<Machine.Connection> connection = entry.constant("connection", Machine.Connection.class);
        if (make.isEmpty() || form.isEmpty() || cooling.isEmpty() || connection.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Machine(id, entry.text("model").orElse(""), entry.text("where").orElse(""), make.get(),
                form.get(), cooling.get(), entry.child("evaporator").flatMap(SiteReader::evaporator),
                entry.number("harvestRate").orElse(BigDecimal.ONE), entry.text("serial"), entry.day("installed"),
                entry.child("warranty").flatMap(SiteReader::warranty), entry.text("refrigerant"),
                entry.number("chargeOunces"), connection.get(), entry.constant("storage", Machine.Storage.class),
                entry.flag("groundLevel"), entry.text("condition")));
    }

    private static Optional<Machine.Evaporator> evaporator(Fields entry) {
        return entry.constant("position", Machine.Evaporator.Position.class)
                .flatMap(position -> entry.constant("plating", Machine.Evaporator.Plating.class)
                        .map(plating -> new Machine.Evaporator(position, plating)));
    }

    private static Optional<Machine.Warranty> warranty(Fields entry) {
        return entry.day("partsUntil").flatMap(parts -> entry.day("laborUntil")
                .map(labor -> new Machine.Warranty(parts, labor, entry.text("payer").orElse(""))));
    }
}
