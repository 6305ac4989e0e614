package icequill.files;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every kind of wrong input gets a problem with its place and what would be right, all of a file at once. */
class BadInputTest {

    @TempDir
    Path shop;

    @BeforeEach
    void demoShop() {
        ShippedFiles.copyDemo(shop).orElseThrow();
    }

    /** One edit of the late call's file, and the report it must give. */
    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(delimiter = '|', textBlock = """
            format: 1                     | format: 2                            | NOT_ALLOWED    | 2  | found the number 2 (the version of this file's layout: 1)
            site: copper-kettle-taproom   | site: copper-kettle-taprom           | UNKNOWN_NAME   | 0  | there is no site "copper-kettle-taprom" (did you mean "copper-kettle-taproom"?
            site: copper-kettle-taproom   | sites: copper-kettle-taproom         | UNKNOWN_KEY    | 3  | there is no key "sites" here (did you mean "site"?
            site: copper-kettle-taproom   | sight: copper-kettle-taproom         | MISSING        | 2  | "site" is missing
            grade: lead                   | grade: [lead]                        | WRONG_TYPE     | 7  | found a list (text; put it in quotes
            purchaseOrder: CK-1188        | purchaseOrder: 1188                  | WRONG_TYPE     | 5  | found the number 1188 (text; put it in quotes
            limit: 400.00                 | limit: -1                            | OUT_OF_RANGE   | 5  | found the number -1 (an amount of the shop
            limit: 400.00                 | limit: 99999999                      | OUT_OF_RANGE   | 5  | found the number 99999999
            left: 2026-05-13T18:05        | left: 2026-05-13T15:05               | WRONG_ORDER    | 7  | left 2026-05-13T15:05, but arrived 2026-05-13T16:20
            left: 2026-05-13T18:05        | left: 2026-05-15T18:05               | OUT_OF_RANGE   | 7  | a stay of 49 hours (at most 24 hours)
            arrived: 2026-05-13T16:20     | arrived: 2026-03-08T02:30            | NO_SUCH_TIME   | 7  | 2026-03-08T02:30 does not exist in America/New_York
            arrived: 2026-05-13T16:20     | arrived: 2026-02-30T16:20            | NOT_ALLOWED    | 7  | there is no time 2026-02-30T16:20
            arrived: 2026-05-13T16:20     | arrived: 13.5.2026 16:20             | NOT_ALLOWED    | 7  | found the text "13.5.2026 16:20" (a local date and time
            on: repair                    | on: repare                           | NOT_ALLOWED    | 7  | found the text "repare" (did you mean "repair"?
            """)
    void visit_oneFault_reportedWithLineAndWhatIsAllowed(String right, String wrong, Code code, int line, String text)
            throws IOException {
        Path file = edited("visits/late-call.yaml", right, wrong);

        ShopFolder folder = ShopFolder.read(shop);
        folder.visit(file).ifPresent(visit -> folder.site(visit.site(), Place.ofFile("visits/late-call.yaml")));

        assertThat(folder.problems()).as(folder.problems().toString())
                .anyMatch(problem -> problem.code() == code && problem.place().line() == line
                        && problem.text().contains(text));
    }

    @Test
    void visit_manyFaults_allInOneReport() throws IOException {
        Path file = shop.resolve("visits/many.yaml");
        Files.writeString(file, """
                format: 1
                site: crumb-lane-bakery
                poeple: []
                people:
                  - {name: A, grade: lead, arrived: 2026-05-13T10:00, left: 2026-05-13T09:00}
                  - {name: B, grade: lead, arrived: 2026-11-01T01:30, left: 2026-11-01T03:00, on: parts}
                  - name: C
                    grade: lead
                    arrived: 2026-05-13T10:00
                    left: 2026-05-13T12:00
                    spent: [{until: 2026-05-13T11:00, on: repair}]
                lines:
                  - {material: water-filter, amount: 20000}
                  - {material: water-filter}
                  - {amount: 1}
                  - {material: water-filter, modifier: roof, amount: 1}
                """);

        ShopFolder folder = ShopFolder.read(shop);
        folder.visit(file);

        assertThat(folder.problems()).extracting(problem -> problem.code() + " " + problem.place().line())
                .containsExactlyInAnyOrder("UNKNOWN_KEY 3", "WRONG_ORDER 5", "AMBIGUOUS_TIME 6", "NOT_ALLOWED 6",
                        "WRONG_ORDER 11", "OUT_OF_RANGE 13", "MISSING 14", "NOT_ALLOWED 15", "NOT_ALLOWED 16");
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            shop.yaml                | currency: USD            | currency: XAU                 | UNKNOWN_CURRENCY | there is no currency "XAU" with minor units
            shop.yaml                | zone: America/New_York   | zone: America/New_Yorck       | UNKNOWN_NAME     | did you mean "America/New_York"?
            pricing/labor.yaml       | increment: 15            | increment: 0                  | OUT_OF_RANGE     | found the number 0
            pricing/labor.yaml       | standard: 98.00,         | standard: 98.005,             | OUT_OF_RANGE     | finer than USD is paid (at most 2 decimals)
            pricing/labor.yaml       | standard: 98.00,         | standart: 98.00,              | UNKNOWN_NAME     | there is no labor band "standart" (did you mean "standard"?
            pricing/labor.yaml       | standard: 98.00,         | standart: 98.00,              | MISSING          | no price for the band "standard"
            pricing/labor.yaml       | otherwise: after-hours   | otherwise: after-ours         | UNKNOWN_NAME     | there is no labor band "after-ours"
            pricing/labor.yaml       | until: "17:00"           | until: "06:00"                | WRONG_ORDER      | until 06:00, but from 07:00
            pricing/labor.yaml       | yearly: "01-01"          | yearly: "02-30"               | NOT_ALLOWED      | not a rule for a holiday
            pricing/labor.yaml       | - id: helper             | - id: lead                    | DUPLICATE_NAME   | "lead" is used a second time
            pricing/labor.yaml       | from: 2026-01-01}        | from: 2026-01-01, until: 2025-01-01} | WRONG_ORDER | ends on 2025-01-01
            pricing/labor.yaml       | kind: labor              | kind: labour                  | NOT_ALLOWED      | did you mean "labor"?
            pricing/materials.yaml   | markup: 35               | markup: 35, price: 3          | UNREADABLE       | not YAML
            pricing/materials.yaml   | unit: floz               | unit: cup                     | NOT_ALLOWED      | found the text "cup"
            pricing/materials.yaml   | percent: 30}             | upTo: 110, percent: 30}       | MISSING          | no bracket for this cost
            pricing/taxes.yaml       | cleaning: {taxability: taxable, rate: sales} | cleaning: {taxability: taxable, rate: sails} | UNKNOWN_NAME | there is no rate of this place "sails"
            pricing/taxes.yaml       | cleaning: {taxability: taxable, rate: sales} | cleaning: {taxability: taxable} | MISSING | taxed, but at no rate of category S
            pricing/taxes.yaml       | category: S              | category: Z                   | NOT_ALLOWED      | category Z with 3 components
            """)
    void shopAndRates_oneFault_reported(String name, String right, String wrong, Code code, String text)
            throws IOException {
        edited(name, right, wrong);

        List<Problem> problems = ShopFolder.read(shop).problems();

        assertThat(problems).as(problems.toString())
                .anyMatch(problem -> problem.code() == code && problem.text().contains(text)
                        && problem.place().file().equals(name) && problem.place().line() > 0);
    }

    @Test
    void rates_twoFilesForTheSameDays_overlapNamesBoth() throws IOException {
        Files.copy(shop.resolve("pricing/labor.yaml"), shop.resolve("pricing/labor-next.yaml"));

        assertThat(ShopFolder.read(shop).problems()).extracting(Problem::code).containsExactly(Code.OVERLAP);
        assertThat(ShopFolder.read(shop).problems().getFirst().text()).contains("pricing/labor.yaml:5",
                "pricing/labor-next.yaml:5");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"a: [1, 2 | UNREADABLE | 1", "a: 1\\na: 2 | DUPLICATE_KEY | 2",
            "a: &x 1 | NOT_ALLOWED | 1", "a: *x | UNREADABLE | 1", "\\ta: 1 | UNREADABLE | 1", "--- | WRONG_TYPE | 1",
            "a: 1\\n---\\nb: 2 | UNREADABLE | 3", "- 1\\n- 2 | WRONG_TYPE | 1"})
    void visit_brokenYaml_oneClearProblem(String text, Code code, int line) throws IOException {
        Path file = shop.resolve("visits/broken.yaml");
        Files.writeString(file, text.replace("\\n", "\n").replace("\\t", "\t"));

        ShopFolder folder = ShopFolder.read(shop);
        folder.visit(file);

        assertThat(folder.problems()).as(folder.problems().toString())
                .anyMatch(problem -> problem.code() == code && problem.place().line() == line);
    }

    @Test
    void visit_hugeDeepOrExplodingFile_refusedQuickly() throws IOException {
        assertThat(code("x: " + "a".repeat(10_000_000))).isEqualTo(Code.TOO_LARGE);
        assertThat(code("x: " + "[".repeat(50) + "]".repeat(50))).isEqualTo(Code.TOO_LARGE);
        assertThat(code("x: " + "[".repeat(400_000))).isIn(Code.TOO_LARGE, Code.UNREADABLE);
        StringBuilder bomb = new StringBuilder("a0: &a0 [x]\n");
        for (int i = 1; i < 30; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]%n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        assertThat(code(bomb.toString())).isIn(Code.NOT_ALLOWED, Code.UNREADABLE);
    }

    private Code code(String text) throws IOException {
        Path file = shop.resolve("visits/large.yaml");
        Files.writeString(file, text);
        ShopFolder folder = ShopFolder.read(shop);
        folder.visit(file);
        return folder.problems().getFirst().code();
    }

    @Test
    void visit_notUtf8EmptyOrMissing_saysSo() throws IOException {
        Path file = shop.resolve("visits/odd.yaml");
        Files.write(file, "site: caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(problem(file)).contains("not in UTF-8");
        Files.writeString(file, "# nothing\n");
        assertThat(problem(file)).contains("empty");
        assertThat(problem(shop.resolve("visits/none.yaml"))).contains("no such file");
        Files.writeString(file, "\uFEFFformat: 1\nsite: crumb-lane-bakery\npeople: []\n");
        assertThat(problem(file)).contains("nothing is listed here (at least 1)");
    }

    private String problem(Path file) {
        ShopFolder folder = ShopFolder.read(shop);
        folder.visit(file);
        return folder.problems().getFirst().text();
    }

    /** Whatever is cut out of a file or turned over in it, reading ends with a value or problems, never with a fault. */
    @Test
    void anyFile_mangled_neverAFault() throws IOException {
        Random random = new Random(20260513);
        List<String> names = Stream.of("demo", "pricing").flatMap(set -> ShippedFiles.names(set).stream())
                .filter(name -> name.endsWith(".yaml")).toList();
        for (int i = 0; i < 300; i++) {
            Path file = shop.resolve(names.get(random.nextInt(names.size())));
            String text = Files.readString(file);
            Files.writeString(file, mangled(text, random));
            ShopFolder folder = ShopFolder.read(shop);
            if (folder.shop().isPresent()) {
                folder.sites().forEach(id -> folder.site(id, Place.NOWHERE));
                folder.visits().forEach(folder::visit);
            }
            assertThat(folder.problems()).isNotNull();
            Files.writeString(file, text);
        }
    }

    private static String mangled(String text, Random random) {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + random.nextInt(30));
        String junk = List.of("", "{", "]", ": ", "- ", "\n", "null", "99999999999", "\"", "&a", "2026-13-40")
                .get(random.nextInt(11));
        return text.substring(0, from) + junk + text.substring(to);
    }

    private Path edited(String name, String right, String wrong) throws IOException {
        Path file = shop.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(right);
        int at = text.indexOf(right);
        Files.writeString(file, text.substring(0, at) + wrong + text.substring(at + right.length()));
        return file;
    }

    @ParameterizedTest
    @ValueSource(strings = {"starter", "demo", "pricing"})
    void shippedFiles_lists_areComplete(String set) throws IOException {
        Path root = Path.of(set.equals("pricing") ? "pricing" : "src/main/resources/icequill/" + set);
        try (Stream<Path> files = Files.walk(root)) {
            List<String> names = files.filter(Files::isRegularFile)
                    .map(file -> (set.equals("pricing") ? "pricing/" : "")
                            + root.relativize(file).toString().replace('\\', '/'))
                    .toList();
            assertThat(ShippedFiles.names(set)).containsExactlyInAnyOrderElementsOf(names);
        }
    }

    /** Each entry of the shipped rates says where its values come from. */
    @Test
    void shippedRates_everyFile_namesItsSources() throws IOException {
        for (String name : ShippedFiles.names("pricing")) {
            if (name.endsWith(".yaml")) {
                String text = Files.readString(Path.of(name));
                long prices = text.lines()
                        .filter(line -> line.matches(".*(price|cost|wage|percent|hourly|prices): .*[0-9].*"))
                        .filter(line -> !line.contains("#")).filter(line -> !line.strip().startsWith("- {")).count();
                assertThat(text).containsPattern(
                        "invented for the demo|common practice|ublished source|from memory|From memory");
                assertThat(prices).as(name + ": prices without a source beside them").isLessThanOrEqualTo(3);
            }
        }
    }

    @Test
    void write_targetExists_keptUnlessReplacingIsAsked() throws IOException {
        Path file = shop.resolve("papers/x.txt");
        SafeFile.write(file, new byte[]{1}, false).orElseThrow();

        assertThat(SafeFile.write(file, new byte[]{2}, false).problems()).extracting(Problem::code)
                .containsExactly(Code.ALREADY_EXISTS);
        assertThat(Files.readAllBytes(file)).containsExactly(1);
        SafeFile.write(file, new byte[]{2}, true).orElseThrow();
        assertThat(Files.readAllBytes(file)).containsExactly(2);
        assertThat(SafeFile.write(shop.resolve("shop.yaml/x.txt"), new byte[]{1}, false).problems())
                .extracting(Problem::code).containsExactly(Code.CANNOT_WRITE);
        try (Stream<Path> left = Files.list(shop.resolve("papers"))) {
            assertThat(left).hasSize(1);
        }
    }
}
