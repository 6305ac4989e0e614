package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.explain.HowReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands as a user runs them, on the invented shop. */
@Tag("wide")
public class CommandsTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-30T15:00:00Z"), ZoneOffset.UTC);

    private static final Set<String> FROM_FORMS = Set.of("price", "compare", "brushing", "invoice draft", "quote draft",
            "quote earnings", "agreement print", "agreement renewal", "visit record", "visit worksheet",
            "visit timetable", "customer statement", "customer reminder");

    @TempDir
    static Path folder;

    private static Path shop;

    /** What a run printed, and its exit status. */
    public record Run(int status, String out, String err) {

        public static Run of(String... args) {
            return at(CLOCK, args);
        }

        public static Run at(Clock clock, String... args) {
            return typing("", clock, args);
        }

        /** The same, with lines that somebody types. */
        public static Run typing(String typed, Clock clock, String... args) {
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            int status = Main.run(clock, new BufferedReader(new StringReader(typed)), new PrintWriter(out, true),
                    new PrintWriter(err, true), withForms(args));
            return new Run(status, out.toString(), err.toString());
        }

        /** The same, with the sites and agreements that lie beside the shop of a form laid over the book. */
        private static String[] withForms(String... args) {
            List<String> line = new ArrayList<>(List.of(args));
            if (args.length > 1 && (FROM_FORMS.contains(args[0]) || FROM_FORMS.contains(args[0] + " " + args[1]))
                    && line.stream().noneMatch("--help"::equals)) {
                Stream.of(args).skip(1).filter(word -> word.endsWith(".yaml")).map(Path::of).filter(Path::isAbsolute)
                        .limit(1).flatMap(file -> DemoShop.named(file.resolve("../..").normalize()).stream())
                        .forEach(form -> line.addAll(List.of("--with", form.toString())));
            }
            return line.toArray(String[]::new);
        }

        public JsonNode json() {
            return JsonMapper.shared().readTree(out);
        }
    }

    @BeforeAll
    static void demoShop() {
        shop = folder.resolve("shop");
        DemoShop.files(shop);
    }

    /** Worked by hand from 52 / 78 / 104 and 98 / 147 / 196; the first is common practice: a brushing costs about 150. */
    @ParameterizedTest
    @CsvSource({"ten-minute-brushing, 150.00, 98.00", "late-call, 276.58, 65.33", "clock-change, 300.00, 196.00"})
    void price_demoVisit_asWorkedByHand(String visit, String net, String firstLabor) {
        Run run = Run.of("price", visit(visit), "--json");

        assertThat(run.status()).isZero();
        assertThat(run.json().path("net").asString()).isEqualTo(net);
        assertThat(run.json().path("lines").get(1).path("net").asString()).isEqualTo(firstLabor);
        assertThat(run.json().path("currency").asString()).isEqualTo("USD");
    }

    /** What the person's time was for holds for each of its spells that does not say otherwise: here 40 minutes of repair. */
    @Test
    void price_callbackWithTwoSpells_nothingIsCharged() throws IOException {
        Path file = shop.resolve("visits/two-spells.yaml");
        Files.writeString(file, """
                format: 1
                site: pennon-wharf-taproom
                serviceCall: callback
                people:
                  - name: Sol Marrero
                    grade: lead
                    arrived: 2026-03-20T14:00
                    left: 2026-03-20T15:00
                    on: repair
                    outcome: callback
                    spent: [{until: 2026-03-20T14:20, on: diagnosis}, {until: 2026-03-20T15:00}]
                """);

        JsonNode price = Run.of("price", file.toString(), "--json").json();
        Files.delete(file);

        assertThat(price.path("gross").asString()).isEqualTo("0.00");
        assertThat(price.path("lines")).extracting(line -> line.path("chargeClass").asString() + " "
                + line.path("outcome").asString() + " " + line.path("list").asString())
                .containsExactly("travel callback 52.00", "diagnosis callback 32.67", "repair callback 65.33");
    }

    /**
     * 3 July 2026 is the Friday before: 104.00 and 196.00 on a holiday; the Saturday itself is then after
     * hours: 78.00, 147.00. Labor less the 10 % of the agreement that runs there by then.
     */
    @Test
    void price_observedHoliday_insteadOrToo() throws IOException {
        Path other = folder.resolve("observed");
        DemoShop.files(other);
        Path labor = other.resolve("pricing/labor.yaml");
        String rates = Files.readString(labor);
        Path visit = other.resolve("visits/ten-minute-brushing.yaml");
        String brushing = Files.readString(visit).replaceAll("(?m)^asked:\n( .*\n)+", "");

        for (String expected : List.of("instead 03 104.00 176.40", "instead 04 78.00 132.30", "too 03 104.00 176.40",
                "too 04 104.00 176.40", "instead 02 52.00 88.20")) {
            String[] part = expected.split(" ", -1);
            Files.writeString(labor, rates.replace("yearly: \"07-04\"", "yearly: \"07-04\", observed: " + part[0]));
            Files.writeString(visit, brushing.replace("2026-05-13T", "2026-07-" + part[1] + "T"));
            JsonNode lines = Run.of("price", visit.toString(), "--json").json().path("lines");
            assertThat(lines).extracting(line -> line.path("net").asString()).as(expected)
                    .startsWith(part[2], part[3]);
        }
    }

    @Test
    void price_everyDemoVisit_sumsAgree() throws IOException {
        for (Path visit : visits()) {
            JsonNode price = Run.of("price", visit.toString(), "--json").json();

            assertThat(sum(price.path("lines"), "net")).as(visit.toString())
                    .isEqualByComparingTo(price.path("net").asString());
            assertThat(sum(price.path("taxes"), "amount")).isEqualByComparingTo(price.path("tax").asString());
            assertThat(new BigDecimal(price.path("net").asString()).add(new BigDecimal(price.path("tax").asString())))
                    .isEqualByComparingTo(price.path("gross").asString());
            for (JsonNode line : price.path("lines")) {
                assertThat(HowReader.evaluate(line.path("how").asString()))
                        .isEqualByComparingTo(line.path("net").asString());
            }
            for (JsonNode tax : price.path("taxes")) {
                assertThat(HowReader.evaluate(tax.path("how").asString()))
                        .isEqualByComparingTo(tax.path("amount").asString());
            }
        }
    }

    @Test
    void price_owner_showsCostAndMarginOnlyWhenAsked() {
        String plain = Run.of("price", visit("late-call"), "--how").out();
        String owner = Run.of("price", visit("late-call"), "--how", "--owner").out();

        assertThat(owner).contains("cost", "margin", "wage 46.50 an hour, pricing/labor.yaml:");
        assertThat(plain).doesNotContain("cost", "margin", "wage");
        assertThat(Run.of("price", visit("late-call"), "--json").out()).doesNotContain("cost", "margin", "wage",
                "pricing/");
    }

    /** The part costs 36.90 and its markup bracket is 50 %; the customer reads neither in any file that leaves the shop. */
    @Test
    void quote_owner_showsCostAndMarginThatNoPaperHas() throws IOException {
        String file = shop.resolve("quotes/float-switch.yaml").toString();

        Run owner = Run.of("quote", "earnings", file, "--date", "2026-05-14");
        Run paper = Run.of("quote", "draft", file, "--date", "2026-05-14", "--html", "--json");

        assertThat(owner.out()).contains("cost", "margin", "cost 36.90", "markup 50");
        assertThat(paper.status()).as(paper.out()).isZero();
        assertThat(paper.json().path("gross").asString()).isEqualTo("250.25");
        for (int i = 1; i < 2; i++) {
            assertThat(Files.readString(Path.of(paper.json().path("files").get(i).asString())))
                    .doesNotContain("36.90", "markup", "wage", "pricing/").contains("250.25");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"nonsense --help", "--help nonsense", "price visits/late-call.yaml --nonsense --help"})
    void wordNotKnown_beforeHelp_isWrongUsage(String args) {
        Run run = Run.of(args.split(" ", -1));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("nonsense", "--help");
        assertThat(run.out()).isEmpty();
    }

    /** All amounts worked by hand elsewhere in the tests; what goes back is negative. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "quote draft quotes/float-switch.yaml --date 2026-05-14 | /amounts/gross | 250.25",
            "quote draft quotes/crumb-lane-plan.yaml --date 2026-05-14 | /amounts/choices/0/currency | USD",
            "agreement print agreements/crumb-lane-bakery.yaml --date 2026-05-20 | /amounts/yearPrice | 1075.00",
            "agreement print agreements/crumb-lane-bakery.yaml --date 2026-05-20 | /amounts/installments/3/amount | 268.75",
            "agreement renewal agreements/crumb-lane-bakery.yaml --date 2027-03-05 | /paper/amounts/oldPrice | 1075.00",
            "agreement renewal agreements/crumb-lane-bakery.yaml --date 2027-03-05 | /paper/amounts/newPrice | 1120.00",
            "agreement renewal agreements/crumb-lane-bakery.yaml --date 2027-03-05 | /paper/amounts/difference | 45.00"})
    void json_hasTheAmountsOfThePaper(String args, String path, String amount) {
        String[] words = args.split(" ", -1);
        words[2] = file(words[2]);

        assertThat(json(words).at(path).asString()).isEqualTo(amount);
    }

    @Test
    void price_json_hasTheRemarksOfThePaper() {
        JsonNode price = json("price", visit("late-call"));

        assertThat(price.path("remarks").toString()).contains("Sales tax is due because your certificate DEMO-R-4410");
    }

    /** A statement in the other language, or a draft of another day, stands beside the first; the same again replaces it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "agreement print agreements/mercado-del-mar.yaml --date 2026-05-20 | --lang en --date 2026-05-20 | 2026-05-20-en",
            "agreement print agreements/hotel-fernhill.yaml --date 2026-05-20 | --date 2026-05-21 | 2026-05-21-en",
            "visit record visits/over-midnight-hotel.yaml --date 2026-05-20 | --date 2026-05-21 | 2026-05-21-en",
            "invoice draft visits/holiday-call-mercado.yaml --date 2026-05-20 | --lang en --date 2026-05-20 | 2026-05-20-en"})
    void paperOfAnotherDayOrLanguage_isNotReplaced(String first, String other, String added) throws IOException {
        String[] words = first.split(" ", -1);
        words[2] = file(words[2]);
        String[] again = Stream.concat(Stream.of(words[0], words[1], words[2]), Stream.of(other.split(" ", -1)))
                .toArray(String[]::new);
        Path kept = Path.of(json(words).path("files").get(0).asString());
        byte[] before = Files.readAllBytes(kept);

        Path beside = Path.of(json(again).path("files").get(0).asString());

        assertThat(Files.readAllBytes(kept)).isEqualTo(before);
        assertThat(beside.getFileName().toString()).endsWith(added + ".pdf")
                .isNotEqualTo(kept.getFileName().toString());
        assertThat(json(again).path("files").get(0).asString()).isEqualTo(beside.toString());
        assertThat(json(words).path("files").get(0).asString()).isEqualTo(kept.toString());
    }

    /** What lies in the way and is no paper of ours is left alone. */
    @Test
    void anotherFileOfThatName_isNotReplaced() throws IOException {
        Path mine = Files.writeString(
                Files.createDirectories(shop.resolve("papers")).resolve("draft-two-leads-hotel.pdf"),
                "my notes");

        Path written = Path
                .of(json("invoice", "draft", visit("two-leads-hotel"), "--date", "2026-06-20").path("files").get(0)
                        .asString());

        assertThat(Files.readString(mine)).isEqualTo("my notes");
        assertThat(written.getFileName().toString()).isEqualTo("draft-two-leads-hotel-2026-06-20-en.pdf");
    }

    private static JsonNode json(String... args) {
        Run run = Run.of(Stream.concat(Stream.of(args), Stream.of("--json")).toArray(String[]::new));
        assertThat(run.status()).as(run.out() + run.err()).isZero();
        return run.json();
    }

    private static String file(String name) {
        return shop.resolve(name).toString();
    }

    @Test
    void invoice_anyDemoVisit_customerSeesNothingOfTheOwners() throws IOException {
        for (Path visit : visits()) {
            Run run = Run.of("invoice", "draft", visit.toString(), "--html", "--json");
            assertThat(run.status()).as(visit + run.out()).isZero();
            String html = Files.readString(Path.of(run.json().path("files").get(1).asString()));
            assertThat(html).doesNotContainIgnoringCase("margin:0.").doesNotContain("wage", "markup", "pricing/",
                    "46.50");
            assertThat(run.out()).doesNotContain("margin", "wage", "markup");
            try (PDDocument pdf = Loader.loadPDF(Path.of(run.json().path("files").get(0).asString()).toFile())) {
                assertThat(new PDFTextStripper().getText(pdf))
                        .contains(run.json().path("net").asString().substring(0, 1))
                        .doesNotContain("wage", "markup", "pricing/", "46.50");
            }
        }
    }

    @Test
    void invoice_withoutNumber_isADraftAndSaysSo() throws IOException {
        Run run = Run.of("invoice", "draft", visit("late-call"), "--lang", "es", "--html", "--json");

        assertThat(Files.readString(Path.of(run.json().path("files").get(1).asString())))
                .contains("Borrador de factura", "lang=\"es\"", "13 de mayo de 2026", "276.58");
        assertThat(run.json().path("name").asString()).startsWith("draft-late-call");
    }

    @Test
    void invoice_aboveTheLimitOrUnprintable_refusedAndNothingWritten(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        DemoShop.files(mine);
        Path call = mine.resolve("visits/late-call.yaml");
        Files.writeString(call, Files.readString(call).replace("limit: 400.00", "limit: 276.57"));
        Run limit = Run.of("invoice", "draft", call.toString());
        Run price = Run.of("price", call.toString());
        Path site = mine.resolve("sites/crumb-lane-bakery.yaml");
        Files.writeString(site, Files.readString(site).replace("attention: Accounts", "attention: \ud83e\uddca"));

        Run glyph = Run.of("invoice", "draft", mine.resolve("visits/ten-minute-brushing.yaml").toString(), "--json");

        assertThat(limit.status()).isEqualTo(3);
        assertThat(limit.err()).contains("visits/late-call.yaml:12:", "276.58, above the limit of 276.57");
        assertThat(glyph.status()).isEqualTo(3);
        assertThat(glyph.json().path("problems").get(0).path("code").asString()).isEqualTo("no-glyph");
        assertThat(glyph.json().path("problems").get(0).path("line").asInt()).isEqualTo(11);
        assertThat(price.err()).contains("Note:");
        assertThat(mine.resolve("papers")).doesNotExist();
    }

    @Test
    void import_manyFiles_everyProblemOfAllInOneRunAndNothingStored(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        DemoShop.files(mine);
        for (String edit : List.of("visits/late-call.yaml|grade: lead|grade: leed",
                "visits/clock-change.yaml|arrived: 2026-03-08T01:30|arrived: 2026-03-08T02:30",
                "sites/mercado-del-mar.yaml|taxPlace: alder-county|taxPlace: elder-county",
                "pricing/adjustments.yaml|price: 45.00|prize: 45.00",
                "planned/summer-cleaning-bakery.yaml|{task: flush}|{task: flash}",
                "brushing/hotel-fernhill.yaml|[floor-3]|[floor-33]",
                "sites/harbor-street-clinic.yaml|signed: 2024-09-10|signed: 2024-09-10\n      expires: 2025-09-10")) {
            String[] parts = edit.split("\\|", -1);
            Path file = mine.resolve(parts[0]);
            Files.writeString(file, Files.readString(file).replace(parts[1], parts[2]));
        }

        Run run = Run.of(Stream.of(List.of("import", "--shop", mine.toString()), DemoShop.forms(mine).stream()
                .map(Path::toString).toList()).flatMap(List::stream).toArray(String[]::new));

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err())
                .contains("pricing/adjustments.yaml:8", "visits/clock-change.yaml:15", "there is no grade \"leed\"",
                        "sites/mercado-del-mar.yaml:29", "planned/summer-cleaning-bakery.yaml:21",
                        "brushing/hotel-fernhill.yaml:8",
                        "no tax rule for \"elder-county\"", "did you mean \"price\"?")
                .doesNotContain("there is no modifier \"first-machine\"");
        assertThat(mine.resolve("book")).doesNotExist();
    }

    @Test
    void check_demoShop_isClean(@TempDir Path other) {
        Path whole = DemoShop.in(other.resolve("whole"));

        Run run = Run.of("check", "--shop", whole.toString());

        assertThat(run.out() + run.err()).contains("All is well: 9 sites, 15 forms of work to come or to bill.");
        assertThat(run.status()).isZero();
    }

    /** A certificate expires while nobody changes anything. */
    @Test
    void check_expiredCertificate_isTold(@TempDir Path other) throws IOException {
        Path mine = DemoShop.files(other.resolve("mine"));
        Path clinic = mine.resolve("sites/harbor-street-clinic.yaml");
        Files.writeString(clinic,
                Files.readString(clinic).replace("signed: 2024-09-10",
                        "signed: 2024-09-10\n      expires: 2025-09-10"));
        DemoShop.imported(mine);

        assertThat(Run.of("check", "--shop", mine.toString()).err()).contains("certificate DEMO-E-2093");
    }

    @Test
    void newShop_starter_pricesAndChecksListWhatIsStillAsShipped(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        assertThat(Run.of("new", mine.toString()).status()).isZero();
        assertThat(mine.resolve("templates")).isDirectory();
        assertThat(mine.resolve("book")).isDirectory();

        Run check = Run.of("check", "--shop", mine.toString());

        assertThat(check.status()).isEqualTo(3);
        assertThat(check.err()).contains("shop.yaml:4: still as shipped: name: Your shop's name",
                "still as shipped: registration: DEMO-00000-1", "still as shipped: hourly: {standard: 98.00",
                "pricing/taxes.yaml:");
        long marks = Stream.of(mine, mine.resolve("pricing")).flatMap(CommandsTest::lines)
                .filter(line -> line.matches("[^#]*[^#\\s][^#]*(\"#.*)?#.*as shipped.*")).count();
        assertThat(check.err().lines().filter(line -> line.contains("still as shipped"))).hasSize((int) marks)
                .hasSizeGreaterThan(60);
        assertThat(check.err().lines()).hasSize((int) marks + 1);
        String visit = forms(mine, false).getLast().toString();
        assertThat(Run.of("price", visit).status()).isZero();
        assertThat(Run.of("invoice", "draft", visit).status()).isZero();
        assertThat(Run.of("new", mine.toString())).extracting(Run::status).isEqualTo(3);
    }

    /** The forms of a first site and visit, written beside the shop. */
    private static List<Path> forms(Path shop, boolean own) throws IOException {
        List<Path> files = new ArrayList<>();
        for (String kind : List.of("site", "visit")) {
            Path file = Files.createDirectories(shop.resolve(kind + "s")).resolve("first-" + kind + ".yaml");
            String form = Run.of("form", kind).out();
            files.add(Files.writeString(file, own ? unmarked(form) : form));
        }
        return files;
    }

    private static String unmarked(String text) {
        return text.replaceAll("# as shipped[^\n]*", "");
    }

    private static void unmark(Path... files) throws IOException {
        for (Path file : files) {
            Files.writeString(file, unmarked(Files.readString(file)));
        }
    }

    private static Run imported(Path shop, List<Path> forms) {
        return Run.at(BookShop.CLOCK,
                Stream.concat(Stream.of("import", "--shop", shop.toString()), forms.stream().map(Path::toString))
                        .toArray(String[]::new));
    }

    private static Run issued(Path shop) {
        return Run.at(BookShop.CLOCK, "invoice", "issue", "first-visit", "--date", "2026-05-14", "--shop",
                shop.toString());
    }

    private static Stream<String> lines(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).toList().stream().flatMap(file -> {
                try {
                    return Files.readAllLines(file).stream();
                } catch (IOException unreadable) {
                    throw new UncheckedIOException(unreadable);
                }
            });
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** What would be printed is refused, and nothing else; marks that are taken away count no longer. */
    @Test
    void newShop_valuesAsShipped_areNeitherTakenInNorIssued(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        Run.of("new", mine.toString());

        Run marked = imported(mine, forms(mine, false));

        assertThat(marked.status()).isEqualTo(3);
        assertThat(marked.err()).contains("first-site.yaml", "still as shipped: model: Model and size",
                "still as shipped: taxPlace: alder-county");
        assertThat(imported(mine, forms(mine, true)).err()).isEmpty();

        Run issued = issued(mine);
        Run record = Run.of("visit", "record", "first-visit", "--date", "2026-05-14", "--shop", mine.toString());

        assertThat(issued.status()).as(issued.out()).isEqualTo(3);
        assertThat(issued.err()).contains("still as shipped: name: Your shop's name", "98.00", "52.00")
                .doesNotContain("wage", "registration: DEMO");
        assertThat(record.err()).contains("still as shipped: name: Your shop's name").doesNotContain("98.00");
        assertThat(Run.of("find", "first", "--shop", mine.toString(), "--json").json().path("papers")).isEmpty();

        unmark(mine.resolve("shop.yaml"), mine.resolve("pricing/labor.yaml"), mine.resolve("pricing/materials.yaml"),
                mine.resolve("pricing/service-call.yaml"), mine.resolve("pricing/taxes.yaml"));

        assertThat(issued(mine)).satisfies(run -> assertThat(run.status()).as(run.err()).isZero());
    }

    /** Only whole values: a city named Troy is not printed by the word "destroyed", nor a qualification by the word "acid". */
    @Test
    void newShop_partsOfWordsAndWordsOfLists_areNotWhatIsShipped(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        Run.of("new", mine.toString());
        List<Path> forms = forms(mine, true);
        Files.writeString(forms.getLast(), Files.readString(forms.getLast()).replace("complaint: Yearly cleaning.",
                "complaint: The float was destroyed by acid; the gauge refrigerant is legal."));
        Path shopFile = mine.resolve("shop.yaml");
        unmark(shopFile, mine.resolve("pricing/service-call.yaml"), mine.resolve("pricing/taxes.yaml"));
        Path adjustments = mine.resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments, Files.readString(adjustments).replaceFirst("modifiers:.*\n",
                "$0  - {id: troy, name: {en: Troy, es: Troy}, class: travel, price: 1.00, unit: ea}   # as shipped\n"));
        for (Path file : List.of(mine.resolve("pricing/labor.yaml"), mine.resolve("pricing/materials.yaml"))) {
            Files.writeString(file, Files.readString(file).replaceAll("((hourly|price): .*)# as shipped[^\n]*", "$1"));
        }
        imported(mine, forms);

        assertThat(issued(mine)).satisfies(run -> assertThat(run.status()).as(run.err()).isZero());
        assertThat(Run.of("check", "--shop", mine.toString()).err())
                .contains("still as shipped: - {id: troy, name: {en: Troy", "still as shipped: label: {chemistry: acid",
                        "still as shipped: qualified: [acid, electrical, refrigerant]");
    }

    /** An inspector must not read a number that we invented. */
    @Test
    void newShop_record_refusesTheInventedRegistration(@TempDir Path other) throws IOException {
        Path mine = other.resolve("mine");
        Run.of("new", mine.toString());
        List<Path> forms = forms(mine, true);
        Files.writeString(forms.getLast(), Files.readString(forms.getLast()).replaceFirst(
                "( *)complaint: Yearly cleaning. *",
                "$1complaint: Yearly cleaning.\n$1chemicals: [{material: sanitizer, dose: 1, minutes: 10, strip: 200}]"));
        unmark(mine.resolve("shop.yaml"));

        Run record = Run.of("visit", "record", forms.getLast().toString(), "--date", "2026-05-14");

        assertThat(record.status()).isEqualTo(3);
        assertThat(record.err()).contains("pricing/materials.yaml:", "still as shipped: registration: DEMO-00000-1",
                "1 problem");
    }

    @ParameterizedTest
    @ValueSource(strings = {"prise", "price", "price --howl x", "invoice draft x --date tomorrow",
            "invoice draft x --lang it"})
    void wrongUsage_saysSoAndEndsWithTwo(String line) {
        Run run = Run.of(line.split(" ", -1));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("--help");
    }

    /** One brushing was bought, at 52.00 for coming and the minimum hour of 98.00. */
    @Test
    void brushing_asJson_hasTheFiguresOfTheSheet() {
        JsonNode sheet = Run.of("brushing", shop.resolve("brushing/crumb-lane-bakery.yaml").toString(), "--json").json()
                .path("sheet");

        assertThat(sheet.path("savings").path("bought").asDecimal()).isEqualByComparingTo("150");
        assertThat(sheet.path("ours").get(0).path("how").isMissingNode()).isFalse();
        assertThat(sheet.path("savings").path("electricity").propertyNames()).contains("low", "middle", "high");
    }

    /** Only the help about help stands under no heading. */
    @Test
    void help_commands_standUnderTheirHeadings() {
        String help = Run.of("--help").out();

        assertThat(help).contains("To bill\n  invoice ", "Who and where\n  customer ");
        assertThat(help.substring(help.indexOf("  restore "), help.indexOf("Start here:")).lines()
                .filter(line -> line.matches("  [a-z].*")).map(line -> line.strip().split(" ", 2)[0]))
                .containsExactly("restore", "help");
    }

    private static BigDecimal sum(JsonNode list, String key) {
        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode entry : list) {
            sum = sum.add(new BigDecimal(entry.path(key).asString()));
        }
        return sum;
    }

    private static String visit(String name) {
        return shop.resolve("visits/" + name + ".yaml").toString();
    }

    private static List<Path> visits() throws IOException {
        try (Stream<Path> files = Files.list(shop.resolve("visits"))) {
            return files.sorted().toList();
        }
    }
}
