package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/**
 * What was done where and which papers tell of it, as somebody asks who has the customer on the telephone: an invented deli with two
 * stores, beside the customers of the demo.
 */
@Tag("wide")
class QuestionsTest {

    /** One ten-minute brushing: 52.00 + 98.00 = 150.00, and 8.875 % of it are 13.31. */
    private static final String BRUSHED = "163.31";
    private static final Pattern QUOTE = Pattern.compile("'");
    private static final Pattern BLANK = Pattern.compile(" ");

    private static final String DELIS = """
            format: 1
            form: customer
            id: harrow-deli
            name: Harrow Deli
            billTo:
              - name: Harrow Deli Inc.
                address: {street: [1 Harrow Square], city: Alderton, region: NY, postalCode: "10999", country: US}
            ---
            format: 1
            form: site
            id: elm-street
            customer: harrow-deli
            name: Harrow Deli, Elm Street
            storeNumber: "17"
            address: {street: [12 Elm Street], city: Alderton, region: NY, postalCode: "10999", country: US}
            kind: restaurant
            miles: 3
            taxPlace: alder-county
            machines:
              - {id: counter, model: "Cuber 300, head", where: counter, make: batch, form: head, cooling: air, harvestRate: 300, connection: hard-wired}
              - {id: cellar, model: Flaker 400, where: cellar, make: continuous, form: self-contained, cooling: air, harvestRate: 400, serial: FK-77, connection: hard-wired}
            ---
            format: 1
            form: site
            id: dock-road
            customer: harrow-deli
            name: Harrow Deli, Dock Road
            storeNumber: "22"
            address: {street: [7 Dock Road], city: Alderton, region: NY, postalCode: "10999", country: US}
            kind: restaurant
            miles: 4
            taxPlace: alder-county
            machines:
              - {id: counter, model: "Cuber 300, head", where: counter, make: batch, form: head, cooling: air, harvestRate: 300, connection: hard-wired}
            ---
            format: 1
            form: visit
            id: april-brushing
            site: elm-street
            people: [{name: Per Olsen, grade: lead, arrived: 2026-04-30T10:00, left: 2026-04-30T10:10, on: cleaning}]
            machines: [{machine: counter, tasks: [{task: brush-condenser}]}]
            ---
            format: 1
            form: visit
            id: twice-entered
            site: elm-street
            people: [{name: Ida Brandt, grade: lead, arrived: 2026-05-12T09:00, left: 2026-05-12T09:30, on: diagnosis}]
            machines: [{machine: cellar, complaint: Looks warm.}]
            ---
            format: 1
            form: visit
            id: cellar-call
            site: elm-street
            asked: {by: Ruth Amsel, at: 2026-05-13T08:05, symptom: The cellar machine stands still.}
            people: [{name: Ida Brandt, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T10:10, on: cleaning}]
            machines:
              - machine: cellar
                complaint: No flakes.
                cause: Fluff in the fins.
                correction: Brushed, and watched for a cycle.
                tasks: [{task: brush-condenser}, {task: stop-and-empty, outcome: declined}]
                readings:
                  - {what: air off condenser, unit: °F, before: "131", after: "104"}
                  - {what: bin level, unit: "", after: full}
                recommended:
                  - {text: Brush it monthly., accepted: true}
                  - {text: New fan., accepted: false}
            nextDue: 2026-11-13
            ---
            format: 1
            form: planned-visit
            id: may-cleaning
            site: elm-street
            people: [{name: Ida Brandt, grade: lead, arrived: 2026-05-20T09:00, left: 2026-05-20T10:00, on: cleaning}]
            machines: [{machine: counter, complaint: Before the summer., tasks: [{task: brush-condenser}]}]
            lines: [{material: water-filter, amount: 1, machine: counter}]
            ---
            format: 1
            form: visit
            id: last-night
            site: elm-street
            asked: {by: Rúth Amsel, at: 2026-05-31T21:00, symptom: Water on the floor.}
            people:
              - {name: Per Olsen, grade: lead, arrived: 2026-05-31T22:30, left: 2026-06-01T00:15, on: repair}
              - {name: Ida Brandt, grade: helper, arrived: 2026-05-31T23:00, left: 2026-06-01T00:15, on: repair}
            machines: [{machine: counter, cause: Float switch worn.}]
            lines: [{material: float-switch, amount: 1, machine: counter}]
            ---
            format: 1
            form: visit
            id: dock-brushing
            site: dock-road
            people: [{name: Per Olsen, grade: lead, arrived: 2026-05-12T13:00, left: 2026-05-12T13:10, on: cleaning}]
            machines: [{machine: counter, tasks: [{task: brush-condenser}]}]
            """;

    @TempDir
    static Path common;

    private static final Map<Database, BookShop> SHOPS = new EnumMap<>(Database.class);

    @BeforeAll
    static void books() throws IOException {
        for (Database database : Database.values()) {
            SHOPS.put(database, filled(common.resolve(database.name()), database));
        }
    }

    @AfterAll
    static void forget() {
        SHOPS.clear();
    }

    private static BookShop filled(Path folder, Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path forms = shop.write("delis.yaml", DELIS);
        shop.json("import", forms.toString());
        shop.json("invoice", "issue", "april-brushing", "--date", "2026-05-02");
        shop.json("invoice", "issue", "cellar-call", "--date", "2026-05-14");
        shop.json("invoice", "reissue", "INV-2026-00002", "--purchase-order", "PO-88", "--due", "keep", "--reason",
                "The order was missing.", "--date", "2026-05-20");
        shop.json("payment", "add", "harrow-deli", BRUSHED, "--for", "INV-2026-00001", "--date", "2026-06-01");
        shop.json("payment", "add", "harrow-deli", "100.00", "--for", "INV-2026-00003", "--date", "2026-06-02");
        shop.json("visit", "withdraw", "twice-entered", "--reason", "The same as cellar-call.");
        return shop;
    }

    @ParameterizedTest
    @EnumSource(Database.class)
    void elmStreetInMay_oneCommand_readsLikeAnAnswer(Database database) {
        assertThat(text(database, "site", "history", "elm-street", "--month", "2026-05")).isEqualTo("""
                Harrow Deli, Elm Street (elm-street), Store number 17
                12 Elm Street, Alderton, NY 10999
                May 2026: visits done: 2; planned: 1; withdrawn: 1; asked for by the customer: 2; billed: USD 163.31

                May 12, 2026, 9:00 AM – 9:30 AM: visit twice-entered, withdrawn
                  Withdrawn, and not to be billed: The same as cellar-call.
                  Technician: Ida Brandt, lead technician
                  Cellar · Flaker 400 · serial FK-77
                    Reason: Looks warm.

                May 13, 2026, 10:00 AM – 10:10 AM: visit cellar-call, billed
                  Asked for by: Ruth Amsel, May 13, 2026, 8:05 AM
                  Reported: The cellar machine stands still.
                  Technician: Ida Brandt, lead technician
                  Cellar · Flaker 400 · serial FK-77
                    Complaint: No flakes.
                    Cause: Fluff in the fins.
                    Correction: Brushed, and watched for a cycle.
                    Work done: Condenser brushed along its fins.
                    Readings: Air off condenser before: 131 °F, after: 104 °F; bin level after: full.
                    Recommended and declined: Ice off, bin emptied, water off.
                    Recommended, accepted: Brush it monthly.
                    Recommended, declined: New fan.
                  Next cleaning due by: November 13, 2026
                  Papers:
                    Invoice INV-2026-00002 of May 14, 2026: USD 163.31
                    Credit note CN-2026-00001 of May 20, 2026: USD −163.31, for invoice INV-2026-00002
                    Invoice INV-2026-00003 of May 20, 2026: USD 163.31, in place of INV-2026-00002

                May 20, 2026, 9:00 AM – 10:00 AM: visit may-cleaning, planned
                  Technician: Ida Brandt, lead technician
                  Counter · Cuber 300, head
                    Reason: Before the summer.
                    To do: Brush the condenser along its fins.
                    Parts and filters to bring: Water filter cartridge.

                May 31, 2026, 10:30 PM – June 1, 2026, 12:15 AM: visit last-night, done
                  Asked for by: Rúth Amsel, May 31, 2026, 9:00 PM
                  Reported: Water on the floor.
                  Technicians: Per Olsen, lead technician; Ida Brandt, helper, 11:00 PM – June 1, 2026, 12:15 AM
                  Counter · Cuber 300, head
                    Cause: Float switch worn.
                    Parts and filters put in: Float switch.
                  Not billed yet.
                """);
    }

    @Test
    void machineInSpanish_onlyItsPart_andThatPapersBillWholeVisits() {
        assertThat(text(Database.SQLITE, "machine", "history", "elm-street", "counter", "--until", "2026-05-20",
                "--lang", "es")).isEqualTo("""
                        Harrow Deli, Elm Street (elm-street), Número de sucursal 17
                        12 Elm Street, Alderton, NY 10999
                        Solo lo que se hizo en: Counter · Cuber 300, head
                        hasta el 20 de mayo de 2026: visitas hechas: 1; planeadas: 1; facturado: USD 163.31

                        30 de abril de 2026, 10:00 a. m. – 10:10 a. m.: visita april-brushing, facturada
                          Técnico: Per Olsen, técnico principal
                          Counter · Cuber 300, head
                            Trabajo realizado: Se cepilló el condensador a lo largo de las aletas.
                          Documentos:
                            Factura INV-2026-00001 del 2 de mayo de 2026: USD 163.31

                        20 de mayo de 2026, 9:00 a. m. – 10:00 a. m.: visita may-cleaning, planeada
                          Técnico: Ida Brandt, técnico principal
                          Counter · Cuber 300, head
                            Motivo: Before the summer.
                            Por hacer: Cepillar el condensador a lo largo de las aletas.
                            Refacciones y filtros por llevar: Cartucho de filtro de agua.

                        Los documentos facturan visitas enteras, con lo que se hizo en otras máquinas.
                        """);
        assertThat(text(Database.SQLITE, "site", "history", "elm-street", "--machine", "cellar"))
                .isEqualTo(text(Database.SQLITE, "machine", "history", "elm-street", "cellar"))
                .contains("visit cellar-call, billed").doesNotContain("last-night", "Counter");
    }

    @Test
    void history_asJson_isTheSameRecord() {
        JsonNode history = shop(Database.SQLITE).json("site", "history", "elm-street", "--month", "2026-05");

        assertThat(history.path("site").asString()).isEqualTo("elm-street");
        assertThat(history.path("period").path("until").asString()).isEqualTo("2026-05-31");
        assertThat(history.path("counts").path("calls").asInt()).isEqualTo(2);
        assertThat(history.path("counts").path("billed").get(0).path("amount").asString()).isEqualTo(BRUSHED);
        JsonNode call = history.path("visits").get(1);
        assertThat(call.path("state").asString()).isEqualTo("billed");
        assertThat(call.path("began").asString()).isEqualTo("2026-05-13T10:00:00-04:00");
        assertThat(call.path("call").path("askedBy").asString()).isEqualTo("Ruth Amsel");
        assertThat(call.path("machines").get(0).path("readings").get(0).path("after").asString()).isEqualTo("104");
        assertThat(call.path("machines").get(0).path("recommendations").get(1).path("accepted").asBoolean()).isFalse();
        assertThat(call.path("papers").values()).extracting(JsonNode::asString)
                .containsExactly("INV-2026-00002", "CN-2026-00001", "INV-2026-00003");
        assertThat(history.path("papers").get(1).path("gross").asString()).isEqualTo("-" + BRUSHED);
        assertThat(history.path("papers").get(1).path("corrects").asString()).isEqualTo("INV-2026-00002");
        assertThat(history.path("visits").get(0).path("withdrawn").asString()).isEqualTo("The same as cellar-call.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "--site elm-street | last-night may-cleaning cellar-call twice-entered april-brushing",
            "--site elm-street --month 2026-05 --state done | last-night",
            "--site elm-street --state billed,withdrawn | cellar-call twice-entered april-brushing",
            "--customer harrow-deli --from 2026-05-12 --until 2026-05-13 | cellar-call dock-brushing twice-entered",
            "--machine elm-street/cellar | cellar-call twice-entered",
            "--site dock-road --machine counter | dock-brushing",
            "--by OLSEN --customer harrow-deli | last-night dock-brushing april-brushing",
            "--caller 'ruth amsel' | last-night cellar-call",
            "--caller ruth --state done | last-night",
            "--customer harrow-deli --by brandt --state planned --month 2026-05 | may-cleaning",
            "--by brandt --month 2026-04 | ''",
            "--site elm-street --most 2 | last-night may-cleaning"})
    void list_whatIsAskedFor_theNewestFirst(String asked, String ids) {
        for (Database database : Database.values()) {
            assertThat(listed(database, asked)).as(database + asked)
                    .containsExactlyElementsOf(parts(ids));
        }
    }

    @Test
    void list_onTheScreen_tellsStateAndWho() {
        assertThat(text(Database.SQLITE, "visit", "list", "--site", "elm-street", "--month", "2026-05", "--most", "3"))
                .isEqualTo(
                        """
                                day         visit         site        state    asked for by  technicians            invoices
                                ----------  ------------  ----------  -------  ------------  ---------------------  --------------
                                2026-05-31  last-night    elm-street  done     Rúth Amsel    Per Olsen, Ida Brandt
                                2026-05-20  may-cleaning  elm-street  planned                Ida Brandt
                                2026-05-13  cellar-call   elm-street  billed   Ruth Amsel    Ida Brandt             INV-2026-00003
                                There are older ones: --most 6 shows more.
                                """);
        assertThat(text(Database.SQLITE, "visit", "list", "--by", "brandt", "--month", "2026-04", "--lang", "es"))
                .isEqualTo("Ninguna visita corresponde.\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "site history elm-stret | the book has no site \"elm-stret\" | did you mean \"elm-street\"?",
            "site history elm-street --machine celar | the book has no machine at elm-street \"celar\" | did you mean \"cellar\"?",
            "machine history dock-road cellar | the book has no machine at dock-road \"cellar\" | see: icequill machine list",
            "site history elm-street --month 2026-13 | there is no month \"2026-13\" | write it as 2026-05",
            "site history elm-street --month May | there is no month \"May\" | write it as 2026-05",
            "site history elm-street --month 1026-05 | the month 1026-05 is too far off | a year from 1950 to 2149",
            "visit list --month 2026-05 --from 2026-05-03 | ask for days in two ways | one or the other",
            "visit list --from 2026-05-03 --until 2026-05-02 | --until 2026-05-02 is before --from 2026-05-03 | a last day",
            "visit list --customer harow-deli | the book has no customer \"harow-deli\" | did you mean \"harrow-deli\"?",
            "visit list --site hotel-fernhill --customer harrow-deli | site \"hotel-fernhill\" belongs to customer \"fernhill-hotels\", not to \"harrow-deli\" | one of the two",
            "visit list --machine counter | several sites have a machine \"counter\" | dock-road/counter, elm-street/counter",
            "visit list --machine elm-street/celler | the book has no machine \"elm-street/celler\" | did you mean \"elm-street/cellar\"?",
            "visit list --by Brand-Ida | the book has no visit by \"Brand-Ida\" | a part of the name is enough",
            "find --kind invoise | there is no kind of paper \"invoise\" | did you mean \"invoice\"?",
            "find --state opn | there is no state of an invoice \"opn\" | did you mean \"open\"?",
            "find --store 0413 | the book has no store \"0413\" | did you mean \"0412\"?",
            "find --caller 'Ruth Amsl' | the book has no call by \"Ruth Amsl\" | did you mean \"Ruth Amsel\"?",
            "find --state open --kind quote | --state open is of invoices | no --state",
            "find --month 2026-05 --until 2026-05-03 | ask for days in two ways | one or the other",
            "find | what to look for is missing | --month, --kind, --state, --caller or --store",
            "visit list --caller 'Ruth Amsl' | the book has no call by \"Ruth Amsl\" | did you mean \"Ruth Amsel\"?"})
    void wrongQuestion_isOneClearReport(String line, String message, String allowed) {
        for (Database database : Database.values()) {
            assertThat(shop(database).problems(words(line))).singleElement().asString().contains(message, allowed);
        }
    }

    @Test
    void severalThingsWrong_areSaidAtOnce() {
        assertThat(shop(Database.SQLITE).problems("visit", "list", "--site", "nowhere", "--customer", "nobody"))
                .hasSize(2);
        assertThat(shop(Database.SQLITE).problems("find", "--kind", "bill", "--state", "late", "--store", "9",
                "--caller", "nobody", "--month", "13")).hasSize(5);
        assertThat(shop(Database.SQLITE).run("visit", "list", "--state", "paid").status()).isEqualTo(2);
        assertThat(Run.of("contact").err())
                .contains("what to do is missing: one of add, change, list, remove");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "--month 2026-05 | INV-2026-00003 CN-2026-00001 INV-2026-00002 INV-2026-00001", "--month 2026-04 | ''",
            "--state open | INV-2026-00003", "--state credited | INV-2026-00002",
            "--state paid | INV-2026-00001", "--state part-paid --store 17 | INV-2026-00003",
            "--kind credit-note | CN-2026-00001",
            "--kind invoice,credit-note --from 2026-05-14 --until 2026-05-19 | INV-2026-00002",
            "--caller amsel | INV-2026-00003 CN-2026-00001 INV-2026-00002",
            "--caller amsel --state open | INV-2026-00003", "--store 17 --until 2026-05-13 | INV-2026-00001",
            "--store 17 --most 1 | INV-2026-00003",
            "elm --kind invoice --month 2026-05 --state credited | INV-2026-00002",
            "163.31 --state open | INV-2026-00003", "163.31 --state paid | INV-2026-00001",
            "163.31 harrow --state credited | INV-2026-00002",
            "PO-88 --month 2026-05 | INV-2026-00003", "PO-88 --month 2026-06 | ''", "3 | INV-2026-00003"})
    void find_wordsAndWhatPapersAreLike_fitAllAtOnce(String asked, String numbers) {
        for (Database database : Database.values()) {
            assertThat(shop(database).json(words("find " + asked)).path("papers").values())
                    .extracting(paper -> paper.path("number").asString()).as(database + asked)
                    .containsExactlyElementsOf(parts(numbers));
        }
    }

    /** Whatever the period: a visit is in its site's history exactly if a list of that site has it, and each paper once. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void historyAndList_anyPeriod_areOfTheSameVisits(Database database) {
        Random random = new Random(20260531);
        for (int i = 0; i < 6; i++) {
            for (String site : List.of("elm-street", "dock-road", "hotel-fernhill")) {
                int first = 1 + random.nextInt(28);
                String asked = "--site " + site + " --from 2026-0" + (3 + random.nextInt(2)) + "-"
                        + "%02d".formatted(first) + " --until 2026-0" + (5 + random.nextInt(4)) + "-31"
                                .replace("-31", "-%02d".formatted(1 + random.nextInt(28)));
                JsonNode history = shop(database)
                        .json(words(asked.replace("--site " + site, "site history " + site)));

                assertThat(history.path("visits").values()).extracting(visit -> visit.path("id").asString())
                        .containsExactlyInAnyOrderElementsOf(listed(database, asked));
                List<String> papers = history.path("papers").values().stream()
                        .map(paper -> paper.path("number").asString()).toList();
                assertThat(papers).doesNotHaveDuplicates();
                TreeSet<String> named = new TreeSet<>();
                history.path("visits").values().forEach(visit -> visit.path("papers").values()
                        .forEach(number -> named.add(number.asString())));
                assertThat(papers).containsExactlyInAnyOrderElementsOf(named);
            }
        }
    }

    @Test
    void mergedAndForgotten_toldAsFarAsAnythingIsLeft(@TempDir Path other) throws IOException {
        BookShop shop = filled(other.resolve("shop"), Database.SQLITE);
        shop.json("machine", "change", "dock-road", "counter", "--where", "pantry");
        Files.writeString(other.resolve("twin.yaml"), DELIS.substring(0, DELIS.indexOf("---\n"))
                .replace("harrow-deli", "harrow-twin"));
        shop.json("import", other.resolve("twin.yaml").toString());
        shop.json("customer", "merge", "harrow-deli", "--into", "harrow-twin", "--yes");
        assertThat(shop.json("visit", "list", "--customer", "harrow-twin").path("visits")).hasSize(6);
        assertThat(shop.problems("visit", "list", "--customer", "harrow-deli")).singleElement().asString()
                .contains("was merged into");

        shop.json("invoice", "issue", "dock-brushing", "--date", "2026-06-01");
        shop.json("invoice", "issue", "last-night", "--date", "2026-06-01");
        shop.json("customer", "forget", "harrow-twin", "--yes");

        assertThat(shop.run("site", "history", "elm-street", "--month", "2026-05").out())
                .contains("visit last-night, billed", "What was done was forgotten with its customer.",
                        "Invoice INV-2026-00003")
                .doesNotContain("Amsel", "Brandt");
    }

    /** A price list ends, or is broken by a slip of the pen; what was done stays. */
    @Test
    void brokenRates_toldById(@TempDir Path other) throws IOException {
        BookShop shop = filled(other.resolve("shop"), Database.SQLITE);
        Files.delete(shop.folder().resolve("pricing/tasks.yaml"));

        assertThat(shop.run("site", "history", "elm-street", "--month", "2026-05").out())
                .contains("visit cellar-call, billed", "Work done: Brush-condenser.", "Ida Brandt, lead");
    }

    private static List<String> listed(Database database, String asked) {
        return shop(database).json(words("visit list " + asked)).path("visits").values().stream()
                .map(visit -> visit.path("id").asString()).toList();
    }

    /** As a shell cuts a line into words. */
    private static String[] words(String line) {
        List<String> words = new ArrayList<>();
        List<String> quoted = QUOTE.splitAsStream(line).toList();
        for (int i = 0; i < quoted.size(); i++) {
            words.addAll(i % 2 == 1 ? List.of(quoted.get(i)) : parts(quoted.get(i)));
        }
        return words.toArray(String[]::new);
    }

    private static List<String> parts(String text) {
        return BLANK.splitAsStream(text.strip()).filter(part -> !part.isEmpty()).toList();
    }

    private static String text(Database database, String... args) {
        Run run = shop(database).run(args);
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        return run.out().replace('\u00a0', ' ').replace(System.lineSeparator(), "\n");
    }

    private static BookShop shop(Database database) {
        BookShop shop = SHOPS.get(database);
        assertThat(shop).isNotNull();
        return Objects.requireNonNull(shop);
    }
}
