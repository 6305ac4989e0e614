package icequill.shop;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import icequill.DemoShop;
import icequill.agreement.FilterRule;
import icequill.agreement.IncludedCalls;
import icequill.agreement.IntervalRules;
import icequill.agreement.Plans;
import icequill.agreement.Tier;
import icequill.files.form.FormKind;
import icequill.files.yaml.ShippedMarks;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The rates, schemas and examples that come with the program. */
class ShippedFilesTest {

    /** The origins a value may have. */
    private static final Pattern ORIGIN = Pattern
            .compile("ublished source|5 U\\.S\\.C\\.|ommon practice|rom memory|nvented for the demo|ur estimate");

    private static final Pattern HINT = Pattern.compile("# yaml-language-server: \\$schema=(\\S+)");

    @TempDir
    Path shop;

    @ParameterizedTest
    @CsvSource({"starter, src/main/resources/icequill/starter, ''", "demo, src/main/resources/icequill/demo, ''",
            "demo-forms, src/main/resources/icequill/demo-forms, ''",
            "forms, src/main/resources/icequill/forms, forms/",
            "pricing, pricing, pricing/", "schema, src/main/resources/icequill/schema, schema/"})
    void names_everySet_areAllFilesThatExist(String set, Path root, String prefix) throws IOException {
        try (Stream<Path> files = Files.walk(root)) {
            assertThat(ShippedFiles.names(set)).containsExactlyInAnyOrderElementsOf(files.filter(Files::isRegularFile)
                    .map(file -> prefix + root.relativize(file).toString().replace('\\', '/')).toList());
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void copy_demoOrStarter_readsWithoutAProblem(boolean demo) throws IOException {
        (demo ? ShippedFiles.copyDemo(shop) : ShippedFiles.copyStarter(shop)).orElseThrow();

        ShopFolder folder = DemoShop.read(shop);
        assertThat(folder.shop()).isPresent();
        assertThat(folder.schedule()).isPresent();
        assertThat(folder.problems()).isEmpty();
        assertThat(shop.resolve("pricing/schema/visit.schema.json")).exists();
        try (Stream<Path> files = Files.list(shop)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder("pricing",
                    "shop.yaml");
        }
    }

    /** "acid" stands on many papers, and never because a shop's file has it in a list of qualifications. */
    @Test
    void asShipped_wordsChosenFromTheSchemas_areNotTakenForWhatIsPrinted() throws IOException {
        ShippedFiles.copyStarter(shop).orElseThrow();
        Set<String> chosen = new TreeSet<>();
        try (Stream<Path> schemas = files("pricing/schema")) {
            schemas.forEach(schema -> JsonMapper.shared().readTree(schema.toFile()).findValues("enum")
                    .forEach(words -> words.forEach(word -> chosen.add(word.asString("")))));
        }

        List<ShippedMarks> marked = ShippedMarks.of(shop);

        assertThat(chosen).contains("acid", "chemicals", "gal");
        assertThat(marked).extracting(ShippedMarks::line).contains("qualified: [acid, electrical, refrigerant]");
        assertThat(marked.stream().flatMap(value -> value.printed().stream())).doesNotContainAnyElementsOf(chosen)
                .contains("1 Your Street", "98.00", "DEMO-00000-1");
    }

    static Stream<String> hinted() {
        return Stream.concat(Stream.of("shop.yaml"), ShippedFiles.names("forms").stream());
    }

    /** An editor that goes by the hint finds the schema, and nothing wrong in the form as it was printed. */
    @ParameterizedTest
    @MethodSource("hinted")
    void hintForEditors_namesASchemaOfTheShop_thatTheFileKeeps(String name) throws IOException {
        ShippedFiles.copyStarter(shop).orElseThrow();
        String text = name.startsWith("forms/")
                ? ShippedFiles.form(FormKind.of(name.substring("forms/".length(), name.indexOf(".yaml")))
                        .orElseThrow()).orElseThrow()
                : Files.readString(shop.resolve(name));
        Matcher hint = HINT.matcher(text);
        assertThat(hint.find()).isTrue();
        Map<String, String> there = new HashMap<>();
        try (Stream<Path> schemas = files("pricing/schema")) {
            for (Path schema : schemas.toList()) {
                there.put("https://shop.example/" + shop.relativize(schema), Files.readString(schema));
            }
        }

        Schema rules = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12,
                registry -> registry.schemas(there))
                .getSchema(SchemaLocation.of("https://shop.example/" + hint.group(1)));

        assertThat(rules.validate(text, InputFormat.YAML)).isEmpty();
        assertThat(rules.validate(text + "\nunheardOf: 1\n", InputFormat.YAML)).isNotEmpty();
    }

    private Stream<Path> files(String within) {
        try (Stream<Path> files = Files.list(shop.resolve(within))) {
            return files.filter(Files::isRegularFile).toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    @Test
    void copy_oneFileThereAlready_nothingWritten() throws IOException {
        Files.writeString(shop.resolve("shop.yaml"), "mine");

        assertThat(ShippedFiles.copyDemo(shop).problems()).extracting(Problem::code)
                .containsExactly(Code.ALREADY_EXISTS);

        try (Stream<Path> files = Files.list(shop)) {
            assertThat(files).containsExactly(shop.resolve("shop.yaml"));
        }
        assertThat(shop.resolve("shop.yaml")).hasContent("mine");
    }

    /** Read back as the files have them. */
    @Test
    void rates_shipped_holdWhatTheFilesSay() {
        DemoShop.files(shop);

        Rates rates = DemoShop.read(shop).schedule().orElseThrow().asOf(LocalDate.of(2026, 5, 13)).orElseThrow();

        assertThat(rates.labor().grades().getFirst().hourly().work().values()).extracting(Amounts::plain)
                .containsExactlyInAnyOrder("98.00", "147.00", "196.00");
        assertThat(rates.labor().grades())
                .extracting(grade -> grade.id() + " " + new TreeSet<>(grade.minimum().values()))
                .containsExactly("lead [60]", "helper [0]");
        assertThat(rates.labor().counting().increments().values()).hasSize(3).allSatisfy(
                increment -> assertThat(increment).isEqualByComparingTo("15"));
        assertThat(rates.serviceCall().zones().getFirst().prices().values()).extracting(Amounts::plain)
                .containsExactlyInAnyOrder("52.00", "78.00", "104.00");
        assertThat(Amounts.plain(rates.serviceCall().beyond())).isEqualTo("2.40");
        assertThat(rates.adjustments().surcharges()).noneMatch(surcharge -> surcharge.applies().always());
    }

    @Test
    void tiers_shipped_semiannualAndQuarterlyForYeast() {
        DemoShop.files(shop);

        Plans plans = DemoShop.read(shop).schedule().orElseThrow().asOf(LocalDate.of(2026, 5, 13)).orElseThrow()
                .plans();

        assertThat(plans.tiers()).extracting(Tier::id).containsExactly("semiannual", "quarterly");
        Tier quarterly = plans.tier("quarterly").orElseThrow();
        assertThat(quarterly.monthsBetweenFullCleans()).contains(3);
        assertThat(quarterly.response()).containsExactlyInAnyOrderEntriesOf(
                Map.of("standard", 8, "after-hours", 12, "sundays-and-holidays", 24));
        assertThat(quarterly.exclusions()).hasSize(6).first().extracting(Wording::english)
                .isEqualTo("compressor and sealed refrigeration system");
        assertThat(quarterly.included()).isEqualTo(IncludedCalls.NONE);
        assertThat(quarterly.discount()).isEqualTo(Percent.of("10"));
        assertThat(quarterly.callDiscounts()).containsEntry(ChargeClass.PARTS, Percent.of("5")).hasSize(4);
        assertThat(Amounts.plain(quarterly.step())).isEqualTo("5.00");
        assertThat(quarterly.cap()).isEqualTo(Percent.of("5"));
        assertThat(plans.filters()).map(FilterRule::months).contains(6);
        assertThat(plans.interval()).isEqualTo(new IntervalRules(new BigDecimal("181"), 1, 1, 1));
    }

    /** A tier of the shop's own: monthly, as the comment in the shipped file proposes it. */
    @Test
    void tiers_ownMonthlyOne_isRead() throws IOException {
        DemoShop.files(shop);
        Path file = shop.resolve("pricing/tiers.yaml");
        String text = Files.readString(file);
        String example = text.substring(text.indexOf("#  - id: monthly")).replaceAll("(?m)^#", "");
        String visit = "      - {name: {en: light visit, es: visita ligera}, scope: light-visit}\n";
        Files.writeString(file, text + example.replaceAll(" *[.]{3} and so on.*\n", visit.repeat(9)));

        ShopFolder folder = DemoShop.read(shop);

        assertThat(folder.problems()).isEmpty();
        Tier monthly = folder.schedule().orElseThrow().asOf(LocalDate.of(2026, 5, 13)).orElseThrow().plans()
                .tier("monthly").orElseThrow();
        assertThat(monthly.slots()).hasSize(12);
        assertThat(monthly.included()).isEqualTo(new IncludedCalls(1, Percent.of("15")));
    }

    static Stream<Path> schemas() {
        return Stream.of("pricing", "schema").flatMap(set -> ShippedFiles.names(set).stream())
                .filter(name -> name.endsWith(".json"))
                .map(name -> Path.of(name.startsWith("pricing") ? "" : "src/main/resources/icequill").resolve(name));
    }

    @ParameterizedTest
    @MethodSource("schemas")
    void schema_every_isValidStrictAndBounded(Path file) throws IOException {
        Schema draft = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        String text = Files.readString(file);

        assertThat(draft.validate(text, InputFormat.JSON)).isEmpty();
        assertThat(draft.validate("{\"type\": 5}", InputFormat.JSON)).isNotEmpty();
        List<String> faults = new ArrayList<>();
        looseRules(JsonMapper.shared().readTree(text), "", faults);
        assertThat(faults).isEmpty();
    }

    /** Objects that take unknown keys, numbers, texts and lists without bounds, bounds that the description does not say. */
    private static void looseRules(JsonNode rules, String path, List<String> faults) {
        String type = rules.path("type").isString() ? rules.path("type").asString() : "";
        boolean chosen = rules.has("enum") || rules.has("const");
        String said = rules.path("description").asString("");
        boolean bounded = switch (type) {
        case "object" -> rules.has("additionalProperties") && !rules.path("additionalProperties").asBoolean(false);
        case "string" -> chosen || rules.has("pattern") || rules.has("maxLength");
        case "array" -> rules.has("maxItems");
        case "number", "integer" -> chosen || (said.contains(rules.path("minimum").asString())
                && said.contains(rules.path("maximum").asString()));
        default -> true;
        };
        if (!bounded) {
            faults.add(path);
        }
        rules.properties().forEach(entry -> looseRules(entry.getValue(), path + "/" + entry.getKey(), faults));
    }

    static Stream<String> rateFiles() {
        return ShippedFiles.names("pricing").stream().filter(name -> name.endsWith(".yaml"));
    }

    /** A value's origin stands on its own line, or in the nearest comment above it that stands no deeper. */
    @ParameterizedTest
    @MethodSource("rateFiles")
    void rates_everyNumber_saysWhereItComesFrom(String name) throws IOException {
        List<String> lines = Files.readAllLines(Path.of(name));
        List<String> without = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String value = lines.get(i).replaceAll("#.*", "").replaceAll("\"[^\"]*\"", "");
            boolean holdsNumber = value.matches(".*: *-?[0-9].*") && !value.startsWith("format:");
            if (holdsNumber && !ORIGIN.matcher(commentOf(lines, i)).find()) {
                without.add(name + ":" + (i + 1) + ": " + lines.get(i));
            }
        }
        assertThat(without).isEmpty();
    }

    private static String commentOf(List<String> lines, int at) {
        int depth = depth(lines.get(at));
        for (int i = at; i >= 0; i--) {
            String line = lines.get(i);
            if (line.contains("# ") && (i == at || depth(line) <= depth)) {
                StringBuilder comment = new StringBuilder(line.substring(line.indexOf('#')));
                for (int j = i - 1; j >= 0 && lines.get(j + 1).strip().startsWith("#")
                        && lines.get(j).strip().startsWith("#"); j--) {
                    comment.append(lines.get(j));
                }
                return comment.toString();
            }
        }
        return "";
    }

    private static int depth(String line) {
        return line.length() - line.stripLeading().length();
    }
}
