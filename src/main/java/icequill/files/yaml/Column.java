package icequill.files.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * One value of a customer, site or machine by itself, as a flag of a command or a column of a list has it.
 *
 * @param name as the list's head has it
 * @param path of keys in a site's file, below the customer, the site or the machine
 * @param about for a reader of help
 * @param parts of each row, where it is of rows; the first is the one that may be given without its key
 */
public record Column(String name, List<String> path, Kind kind, String about, List<Column> parts) {

    /** What a value is. */
    public enum Kind {
        TEXT, NUMBER, YES_OR_NO,
        /** Several texts, with semicolons between them; in a row of others, with commas. */
        LIST,
        /** Several rows of keys and values, as {@code Ana Ruiz | for: bills, visits; Bo Hart | role: owner}. */
        ROWS
    }

    private static final String OF_ROWS = "; between them, as in ";

    private static final Column CONTACTS = rows("contacts", "contacts",
            "whom to turn to, for bills, visits, renewals or approvals" + OF_ROWS
                    + "\"Ana Ruiz | role: owner | for: bills, visits | telephone: 607-555-0142 | email: ana@mill.example\"",
            text("name"), text("role"), list("for"),
            text("telephone"), text("email"));

    /** Those of one contact, but for the name. */
    public static final List<Column> CONTACT = List.of(text("role", "role", "what the person is there"),
            text("for", "for", "what to turn there for: bills, visits, renewals, approvals, with commas between"),
            text("telephone", "telephone", "the person's own number"), text("email", "email", "the person's address"));

    /** Those of a customer; a list has the customer's id in {@code customer}. */
    public static final List<Column> CUSTOMER = List.of(text("name", "name", "the customer's name"),
            text("language", "language", "en or es, of the customer's papers"),
            text("telephone", "telephone", "the customer's own number"), CONTACTS,
            text("vendorNumber", "vendorNumber", "our number in the customer's books"),
            number("paymentDays", "paymentDays", "own terms, in days"),
            new Column("claimsExemption", List.of("claimsExemption"), Kind.YES_OR_NO,
                    "yes: says that no sales tax is due, which needs a certificate", List.of()),
            rows("certificates", "certificates", "of exemption from sales tax" + OF_ROWS
                    + "\"ST-120-7 | kind: resale | state: NY | reason: resale of ice | signed: 2026-01-05 | expires: 2028-12-31\"",
                    text("number"), text("kind"), text("state"),
                    text("reason"), text("signed"), text("expires")),
            text("acceptedOn", "accepted.date", "day on which our prices and minimums were accepted"),
            text("acceptedPaper", "accepted.paper", "the paper in which they were accepted"),
            text("billName", "billTo.name", "who is billed; the customer if left out"),
            text("attention", "billTo.attention", "person or department at the payer's"),
            list("street", "billTo.address.street", "of who is billed; lines with ; between them"),
            text("city", "billTo.address.city", "of who is billed"),
            text("region", "billTo.address.region", "of who is billed"),
            text("postalCode", "billTo.address.postalCode", "of who is billed"),
            text("country", "billTo.address.country", "two capital letters"),
            text("email", "billTo.email", "where bills go"), text("vatId", "billTo.vatId", "VAT identifier"),
            list("mailAtOnce", "mail.atOnce",
                    "for what papers are mailed as soon as they are issued: bills, renewals; ; between them"),
            new Column("mailBare", List.of("mail", "bare"), Kind.YES_OR_NO,
                    "yes: mailed PDFs carry no files within", List.of()),
            new Column("mailData", List.of("mail", "data"), Kind.YES_OR_NO,
                    "yes: the electronic invoice lies beside the PDF", List.of()),
            list("mailEnclosed", "mail.enclosed",
                    "standing papers of the shop that go with mailed bills, by name; ; between them"),
            text("notes", "notes", "for your own eyes; no paper shows them"));

    /** Those of a site; a list has its id in {@code site}. */
    public static final List<Column> SITE = List.of(text("name", "name", "the site's name"),
            text("storeNumber", "storeNumber", "the customer's own number for it"),
            text("telephone", "telephone", "the site's own number"), CONTACTS,
            list("street", "address.street", "lines with ; between them"), text("city", "address.city", "of the site"),
            text("region", "address.region", "of the site"), text("postalCode", "address.postalCode", "of the site"),
            text("country", "address.country", "two capital letters"),
            text("kind", "kind", "as pricing/site-kinds.yaml lists it: bakery, hotel, school, ..."),
            number("makersMonths", "conditions.makersMonths", "shortest cleaning interval that a maker states"),
            number("hardness", "conditions.hardness", "of the water, mg/l as CaCO3"),
            list("air", "conditions.air", "yeast, heat, grease: what there is much of; ; between them"),
            number("miles", "miles", "one way from the shop"),
            text("taxPlace", "taxPlace", "the place whose tax rules apply"),
            text("accessFrom", "access.from", "a technician is let in from, such as 07:00"),
            text("accessUntil", "access.until", "until"), list("season", "season", "months it is open; ; between them"),
            list("closed", "closed", "days of the week on which nobody is let in; ; between them"),
            text("parking", "parking", "where to park"), text("roof", "roof", "how to get onto the roof"),
            rows("modifiers", "modifiers", "what makes planned visits dearer" + OF_ROWS
                    + "\"stairs | amount: 2 | machine: flaker | each: visit\"", text("modifier"),
                    number("amount"), text("machine"), text("each")),
            number("walk", "layout.walk", "minutes between two machines"),
            rows("ways", "layout.ways", "longer or shorter ones" + OF_ROWS + "\"flaker | other: cuber | minutes: 6\"",
                    text("one"), text("other"), number("minutes")),
            rows("neverBothOff", "layout.neverBothOff", "of which one goes on making ice" + OF_ROWS
                    + "\"flaker | other: cuber\"", text("one"), text("other")),
            rows("neverAllOff", "layout.neverAllOff", "machines of which one goes on making ice" + OF_ROWS
                    + "\"flaker, cuber, tower\"", list("machines")),
            rows("circulation", "layout.circulation", "minutes by the maker" + OF_ROWS
                    + "\"cuber | least: 15 | most: 20\"", text("machine"),
                    number("least"), number("most")),
            text("notes", "notes", "for your own eyes; no paper shows them"));

    /** Those of a machine; a list has its id in {@code machine} and its site's in {@code site}. */
    public static final List<Column> MACHINE = List.of(text("model", "model", "as its plate says"),
            text("where", "where", "where in the site it stands"), text("make", "make", "batch or continuous"),
            text("form", "form", "head, self-contained or remote"), text("cooling", "cooling", "air or water"),
            text("evaporator", "evaporator.position", "vertical or horizontal"),
            text("plating", "evaporator.plating", "nickel, tin, stainless or other"),
            number("harvestRate", "harvestRate", "pounds in 24 hours"), text("serial", "serial", "serial number"),
            text("installed", "installed", "day, such as 2021-06-14"),
            text("partsUntil", "warranty.partsUntil", "last day on which the maker pays for parts"),
            text("laborUntil", "warranty.laborUntil", "last day on which the maker pays for labor"),
            text("claimPayer", "warranty.payer", "who settles the claim"),
            text("refrigerant", "refrigerant", "such as R-404A"),
            number("chargeOunces", "chargeOunces", "of refrigerant, by weight"),
            text("connection", "connection", "cord-and-plug or hard-wired"),
            text("storage", "storage",
                    "bin, or dispenser with an auger or agitator; taken for a dispenser if left out"),
            new Column("groundLevel", List.of("groundLevel"), Kind.YES_OR_NO,
                    "yes: all of it is reached standing on the ground", List.of()),
            text("condition", "condition", "notes on its condition"));

    private static final Column BILLS = rows("for", "for", "invoices that it is for, in order" + OF_ROWS
            + "\"INV-2026-00007 | amount: 301.13; INV-2026-00009\"", text("number"), number("amount"), text("from"));
    /** Those of a payment but for the customer and the amount. */
    public static final List<Column> PAYMENT = List.of(
            text("date", "date", "the day on which the money was there, such as 2026-07-02; today if left out"),
            text("way", "way", "transfer, check, card, cash, direct-debit or other"),
            text("reference", "reference", "what the payer wrote; invoices that it names are taken to be meant"), BILLS,
            new Column("onAccount", List.of("onAccount"), Kind.YES_OR_NO, "yes: it is for no invoice yet", List.of()),
            new Column("back", List.of("back"), Kind.YES_OR_NO, "yes: it went to the customer, for credit notes",
                    List.of()),
            text("currency", "currency", "the shop's, such as USD"));
    /** Those of a payment in a list, which has its id in {@code payment}. */
    public static final List<Column> LISTED_PAYMENT = Stream.concat(
            Stream.of(text("customer", "customer", "whose payment it is"),
                    number("amount", "amount", "of the shop's currency")),
            PAYMENT.stream()).toList();

    public Column {
        path = List.copyOf(path);
        parts = List.copyOf(parts);
    }

    /** One that is a text by the name of its key. */
    public static Column text(String key) {
        return text(key, key, "");
    }

    private static Column number(String key) {
        return number(key, key, "");
    }

    private static Column list(String key) {
        return list(key, key, "");
    }

    private static Column rows(String name, String path, String about, Column... parts) {
        return new Column(name, keys(path), Kind.ROWS, about, List.of(parts));
    }

    private static Column text(String name, String path, String about) {
        return new Column(name, keys(path), Kind.TEXT, about, List.of());
    }

    private static Column number(String name, String path, String about) {
        return new Column(name, keys(path), Kind.NUMBER, about, List.of());
    }

    private static Column list(String name, String path, String about) {
        return new Column(name, keys(path), Kind.LIST, about, List.of());
    }

    private static List<String> keys(String path) {
        List<String> keys = new ArrayList<>();
        int from = 0;
        for (int dot = path.indexOf('.'); dot >= 0; dot = path.indexOf('.', from)) {
            keys.add(path.substring(from, dot));
            from = dot + 1;
        }
        keys.add(path.substring(from));
        return keys;
    }

    /** The name as a flag: {@code --vendor-number}. */
    public String flag() {
        return "--" + name.replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
    }
}
