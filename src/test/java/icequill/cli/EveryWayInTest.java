package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.yaml.Column;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Whatever a customer, a site or a machine has may be given by flags, in a form or in a list, and is the same in the book. */
class EveryWayInTest {

    private static final Map<String, String> CUSTOMER = values(
            """
                    name = Mill Lane Bakery
                    language = es
                    telephone = 607-555-0140
                    contacts = Ana Ruiz | role: owner | for: bills, approvals | telephone: 607-555-0142 ext. 7 | email: ana@mill.example; Night shift | for: visits
                    vendorNumber = V-17
                    paymentDays = 14
                    claimsExemption = yes
                    certificates = ST-1 | kind: resale | state: NY | reason: resale of ice | signed: 2024-01-05 | expires: 2025-12-31; ST-2 | kind: exempt | state: NJ | reason: charity | signed: 2026-01-02
                    acceptedOn = 2026-01-04
                    acceptedPaper = price sheet of 2026
                    billName = Mill Lane Holding
                    attention = Accounts
                    street = 4 Mill Lane; Rear door
                    city = Alderton
                    region = NY
                    postalCode = 10999
                    country = US
                    email = bills@mill.example
                    vatId = DE123456789
                    mailAtOnce = bills; renewals
                    mailBare = yes
                    mailData = yes
                    mailEnclosed = w9; insurance
                    notes = Pays after a call.
                    """);

    private static final String CUSTOMER_FORM = """
            name: Mill Lane Bakery
            language: es
            telephone: 607-555-0140
            contacts:
              - {name: Ana Ruiz, role: owner, for: [bills, approvals], telephone: 607-555-0142 ext. 7, email: ana@mill.example}
              - {name: Night shift, for: [visits]}
            vendorNumber: V-17
            paymentDays: 14
            claimsExemption: true
            certificates:
              - {number: ST-1, kind: resale, state: NY, reason: resale of ice, signed: 2024-01-05, expires: 2025-12-31}
              - {number: ST-2, kind: exempt, state: NJ, reason: charity, signed: 2026-01-02}
            accepted: {date: 2026-01-04, paper: price sheet of 2026}
            billTo:
              - name: Mill Lane Holding
                attention: Accounts
                address: {street: [4 Mill Lane, Rear door], city: Alderton, region: NY, postalCode: "10999", country: US}
                email: bills@mill.example
                vatId: DE123456789
            mail: {atOnce: [bills, renewals], bare: true, data: true, enclosed: [w9, insurance]}
            notes: Pays after a call.
            """;

    private static final Map<String, String> SITE = values("""
            name = Mill Lane
            storeNumber = 0017
            telephone = (607) 555-0150
            contacts = Bo Hart | role: kitchen manager | for: visits | telephone: +1 607 555 0151
            street = 4 Mill Lane
            city = Alderton
            region = NY
            postalCode = 10999
            country = US
            kind = bakery
            makersMonths = 4
            hardness = 310.5
            air = heat; grease
            miles = 3.5
            taxPlace = alder-county
            accessFrom = 07:00
            accessUntil = 15:30
            season = may; june
            closed = monday; sunday
            parking = rear dock
            roof = ladder in the yard
            modifiers = roof | amount: 2; stairs | machine: back-bar | each: machine
            walk = 3
            ways = back-bar | other: cellar | minutes: 6
            neverBothOff = back-bar | other: cellar
            neverAllOff = back-bar, cellar
            circulation = back-bar | least: 18 | most: 24
            notes = The key hangs behind the door.
            """);

    private static final Map<String, String> MACHINE = values("""
            model = Cuber 300
            where = back bar
            make = batch
            form = head
            cooling = air
            evaporator = vertical
            plating = nickel
            harvestRate = 300
            serial = ML-77
            installed = 2021-06-14
            partsUntil = 2026-06-14
            laborUntil = 2024-06-14
            claimPayer = Frostworks
            refrigerant = R-404A
            chargeOunces = 22.5
            connection = hard-wired
            storage = bin
            groundLevel = yes
            condition = plating worn
            """);

    private static final String SITE_FORM = """
            format: 1
            customer:
            %s
            name: Mill Lane
            storeNumber: "0017"
            telephone: (607) 555-0150
            contacts:
              - {name: Bo Hart, role: kitchen manager, for: [visits], telephone: +1 607 555 0151}
            address: {street: [4 Mill Lane], city: Alderton, region: NY, postalCode: "10999", country: US}
            kind: bakery
            conditions: {makersMonths: 4, hardness: 310.5, air: [heat, grease]}
            miles: 3.5
            taxPlace: alder-county
            access: {from: "07:00", until: "15:30"}
            season: [may, june]
            closed: [monday, sunday]
            parking: rear dock
            roof: ladder in the yard
            modifiers:
              - {modifier: roof, amount: 2}
              - {modifier: stairs, machine: back-bar, each: machine}
            layout:
              walk: 3
              ways: [{one: back-bar, other: cellar, minutes: 6}]
              neverBothOff: [{one: back-bar, other: cellar}]
              neverAllOff: [{machines: [back-bar, cellar]}]
              circulation: [{machine: back-bar, least: 18, most: 24}]
            notes: The key hangs behind the door.
            machines:
              - id: back-bar
                model: Cuber 300
                where: back bar
                make: batch
                form: head
                cooling: air
                evaporator: {position: vertical, plating: nickel}
                harvestRate: 300
                serial: ML-77
                installed: 2021-06-14
                warranty: {partsUntil: 2026-06-14, laborUntil: 2024-06-14, payer: Frostworks}
                refrigerant: R-404A
                chargeOunces: 22.5
                connection: hard-wired
                storage: bin
                groundLevel: true
                condition: plating worn
              - {id: cellar, model: Flaker, where: cellar, make: continuous, form: head, cooling: air, harvestRate: 500, connection: hard-wired}
            """
            .formatted(CUSTOMER_FORM.lines().map(line -> "  " + line).collect(Collectors.joining("\n")));

    private static final Map<String, String> CELLAR = Map.of("model", "Flaker", "where", "cellar", "make", "continuous",
            "form", "head", "cooling", "air", "harvestRate", "500", "connection", "hard-wired");

    @TempDir
    private Path folder;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void begin() throws IOException {
        shop = BookShop.in(folder.resolve("shop"), Database.SQLITE);
    }

    private void imported(String kind, String id, String text) throws IOException {
        shop.json("import", shop.write(id + ".yaml", "form: " + kind + "\nid: " + id + "\n" + text).toString());
    }

    @Test
    void everyFieldOfACustomer_byFlagsFormAndList_isTheSame() throws IOException {
        assertThat(CUSTOMER).containsOnlyKeys(names(Column.CUSTOMER));

        shop.json(command(CUSTOMER, Column.CUSTOMER, "customer", "add", "by-flags"));
        imported("customer", "by-form", CUSTOMER_FORM);
        shop.json("import", shop.write("customers.csv", list("customer", "by-list", CUSTOMER))
                .toString());

        JsonNode form = shown("customer", "by-form");
        assertThat(form.path("contacts").get(0).path("for")).map(JsonNode::asString)
                .containsExactly("bills", "approvals");
        assertThat(form.path("certificates")).hasSize(2);
        assertThat(form.path("accepted").path("date").asString()).isEqualTo("2026-01-04");
        assertThat(form.path("notes").asString()).isEqualTo("Pays after a call.");
        assertThat(shown("customer", "by-flags")).isEqualTo(form);
        assertThat(shown("customer", "by-list")).isEqualTo(form);
        assertThat(shop.run("customer", "show", "by-list").out()).contains("contacts[1].telephone",
                "607-555-0142 ext. 7", "certificates[2].number", "ST-2");
    }

    @Test
    void everyFieldOfASiteAndAMachine_byFlagsFormAndList_isTheSame() throws IOException {
        assertThat(SITE).containsOnlyKeys(names(Column.SITE));
        assertThat(MACHINE).containsOnlyKeys(names(Column.MACHINE));

        imported("site", "by-form", SITE_FORM);
        Map<String, String> bare = new LinkedHashMap<>(SITE);
        List.of("modifiers", "ways", "neverBothOff", "neverAllOff", "circulation").forEach(bare::remove);
        shop.json(command(bare, Column.SITE, "site", "add", "by-flags", "--customer", "mill-lane-bakery"));
        shop.json(command(MACHINE, Column.MACHINE, "machine", "add", "by-flags", "back-bar"));
        shop.json(command(CELLAR, Column.MACHINE, "machine", "add", "by-flags", "cellar"));
        shop.json(command(SITE, Column.SITE, "site", "change", "by-flags"));
        Map<String, String> payer = new LinkedHashMap<>(SITE);
        payer.put("customer", "mill-lane-bakery");
        Path sites = shop.write("sites.csv", list("site", "by-list", payer));
        Map<String, String> machine = new LinkedHashMap<>(MACHINE);
        machine.put("machine", "back-bar");
        String cellar = "by-list," + MACHINE.keySet().stream().map(name -> CELLAR.getOrDefault(name, ""))
                .collect(Collectors.joining(",")) + ",cellar\n";
        Path machines = shop.write("machines.csv", list("site", "by-list", machine) + cellar);
        shop.json("import", sites.toString(), machines.toString());

        JsonNode form = shown("site", "by-form");
        assertThat(form.path("contacts").get(0).path("telephone").asString()).isEqualTo("+1 607 555 0151");
        assertThat(form.path("storeNumber").asString()).isEqualTo("0017");
        assertThat(form.path("notes").asString()).isEqualTo("The key hangs behind the door.");
        assertThat(shown("site", "by-flags")).isEqualTo(form);
        assertThat(shown("site", "by-list")).isEqualTo(form);
        JsonNode byForm = machine("by-form");
        assertThat(byForm.path("refrigerant").asString()).isEqualTo("R-404A");
        assertThat(machine("by-flags")).isEqualTo(byForm);
        assertThat(machine("by-list")).isEqualTo(byForm);
    }

    /** Each is told with its place and what would be right, and nothing is stored. */
    @Test
    void valuesThatAreWrong_areAllReportedWhereTheyStand() throws IOException {
        Map<String, String> wrong = new LinkedHashMap<>(CUSTOMER);
        wrong.put("telephone", "call Ana");
        wrong.put("contacts",
                "Ana | for: bill | telefone: 607-555-0142 | email: ana; Bo | bills; Cy | role: a | role: b");
        wrong.put("certificates", "ST-1 | kind: resale | state: NY | signed: 2026-13-01 | reason: ice");
        wrong.put("acceptedPaper", "");

        List<String> byFlags = shop.problems(command(wrong, Column.CUSTOMER, "customer", "add", "mill"));
        List<String> byList = shop.problems("import",
                shop.write("customers.csv", list("customer", "mill", wrong)).toString());

        assertThat(byFlags).hasSize(8)
                .anySatisfy(text -> assertThat(text).contains("--telephone", "call Ana", "a telephone number"))
                .anySatisfy(text -> assertThat(text).contains("--contacts", "\"bill\"", "did you mean \"bills\"?"))
                .anySatisfy(text -> assertThat(text).contains("\"telefone\"", "did you mean \"telephone\"?"))
                .anySatisfy(text -> assertThat(text).contains("\"ana\"", "office@mill-lane.example"))
                .anySatisfy(text -> assertThat(text).contains("no key \"bills\"", "allowed: email, for, name"))
                .anySatisfy(text -> assertThat(text).contains("no key \"second role\""))
                .anySatisfy(text -> assertThat(text).contains("--certificates", "no day 2026-13-01"))
                .anySatisfy(text -> assertThat(text).contains("--accepted-on", "\"paper\" is missing"));
        assertThat(byList).hasSize(8).allSatisfy(text -> assertThat(text).contains("customers.csv:2: "));
        assertThat(shop.json("customer", "list", "mill").path("customers")).isEmpty();
    }

    /** An empty value takes a whole part out, and leaves nothing behind. */
    @Test
    void valuesTakenOut_areGone() throws IOException {
        shop.json(command(CUSTOMER, Column.CUSTOMER, "customer", "add", "mill"));

        shop.json("customer", "change", "mill", "--contacts", "", "--certificates", "", "--accepted-on", "",
                "--accepted-paper", "", "--telephone", "", "--mail-at-once", "", "--mail-bare", "", "--mail-data", "",
                "--mail-enclosed", "", "--notes", "");

        JsonNode left = shown("customer", "mill");
        assertThat(left.propertyNames()).containsExactlyInAnyOrder("name", "language", "vendorNumber", "paymentDays",
                "claimsExemption", "billTo");
    }

    /** A bill-to that names somebody keeps him; the site's own contact for bills comes before the customer's. */
    @Test
    void bills_thatNobodyIsNamedFor_goToTheContactForBills() throws IOException {
        Map<String, String> customer = new LinkedHashMap<>(CUSTOMER);
        customer.put("attention", "");
        customer.put("email", "");
        shop.json(command(customer, Column.CUSTOMER, "customer", "add", "mill"));
        shop.json(command(Map.of("name", "Mill Lane", "street", "4 Mill Lane", "city", "Alderton", "region", "NY",
                "postalCode", "10999", "country", "US", "kind", "bakery", "miles", "3"), Column.SITE, "site", "add",
                "mill-lane", "--customer", "mill", "--tax-place", "alder-county"));
        shop.json(command(MACHINE, Column.MACHINE, "machine", "add", "mill-lane", "back-bar"));
        String visit = shop.write("visits/mill-lane.yaml", """
                format: 1
                site: mill-lane
                people:
                  - {name: Rosa, grade: lead, arrived: 2026-05-13T09:00, left: 2026-05-13T10:00, on: cleaning}
                """).toString();

        assertThat(invoice(visit)).contains("Mill Lane Holding", "Ana Ruiz").doesNotContain("Night shift");
        shop.json("site", "change", "mill-lane", "--contacts", "Bo Hart | for: bills");
        assertThat(invoice(visit)).contains("Bo Hart").doesNotContain("Ana Ruiz");
        shop.json("customer", "change", "mill", "--attention", "Accounts");
        assertThat(invoice(visit)).contains("Accounts").doesNotContain("Bo Hart", "Ana Ruiz");
    }

    /** The site's own contact for visits comes before the customer's. */
    @Test
    void workSheet_saysWhomToAskFor() throws IOException {
        shop.json(command(CUSTOMER, Column.CUSTOMER, "customer", "add", "mill"));
        imported("site", "mill-lane", SITE_FORM);
        String visit = shop.write("planned/mill-lane.yaml", """
                format: 1
                site: mill-lane
                people:
                  - {name: Rosa, grade: lead, arrived: 2026-05-13T09:00, left: 2026-05-13T12:00, on: cleaning}
                machines:
                  - {machine: back-bar, tasks: [{task: brush-condenser}]}
                """).toString();

        assertThat(workSheet(visit)).contains("Ask for", "Bo Hart, kitchen manager, +1 607 555 0151",
                "(607) 555-0150");
        shop.json("site", "change", "mill-lane", "--contacts", "", "--telephone", "");
        assertThat(workSheet(visit)).contains("Night shift").doesNotContain("Bo Hart");
    }

    private String workSheet(String visit) throws IOException {
        return Files.readString(
                Path.of(shop.json("visit", "worksheet", visit, "--html").path("files").get(1).asString()));
    }

    private String invoice(String visit) throws IOException {
        return Files.readString(
                Path.of(shop.json("invoice", "draft", visit, "--html").path("files").get(1).asString()));
    }

    private JsonNode shown(String kind, String id) {
        ObjectNode shown = (ObjectNode) shop.json(kind, "show", id).path("form");
        shown.remove(List.of("id", "customer", "format", "form"));
        return shown;
    }

    private JsonNode machine(String site) {
        return shop.json("machine", "show", site, "back-bar").path("form");
    }

    private static String[] names(List<Column> columns) {
        return columns.stream().map(Column::name).toArray(String[]::new);
    }

    private static String[] command(Map<String, String> values, List<Column> columns, String... begin) {
        List<String> line = new ArrayList<>(List.of(begin));
        columns.stream().filter(column -> values.containsKey(column.name())).forEach(column -> {
            line.add(column.flag());
            line.add(values.get(column.name()));
        });
        return line.toArray(String[]::new);
    }

    private static String list(String key, String id, Map<String, String> values) {
        return key + "," + String.join(",", values.keySet()) + "\n" + id + "," + values.values().stream()
                .map(value -> "\"" + value + "\"").collect(Collectors.joining(",")) + "\n";
    }

    private static Map<String, String> values(String text) {
        Map<String, String> values = new LinkedHashMap<>();
        text.lines().forEach(line -> values.put(line.substring(0, line.indexOf(" = ")),
                line.substring(line.indexOf(" = ") + 3)));
        return values;
    }
}
