package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.FitResult;
import icequill.files.answer.AnswerMapper;
import icequill.forecast.inputs.Origin;
import icequill.party.Language;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Fits of the shop's own records, from tables. */
@Tag("wide")
class FitTest {

    private static final String HEAD = "machine,kind,side,from,until,ended\n";
    private static final LocalDate START = LocalDate.of(2020, 1, 1);

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /**
     * Ten failures at 54, 187, 216, 240, 244, 335, 361, 373, 375 and 386, ten more units removed unfailed at 500: scale 606.5280, shape
     * 1.7208 (NIST/SEMATECH e-Handbook of Statistical Methods, 8.4.1.3). Here in days; 606.5280 days are 19.9270 months.
     */
    @Test
    void table_publishedExample_asPublished() throws IOException {
        StringBuilder table = new StringBuilder(HEAD);
        for (int days : List.of(54, 187, 216, 240, 244, 335, 361, 373, 375, 386)) {
            table.append("a,hotel,water,").append(START).append(',').append(START.plusDays(days)).append(",stopped\n");
        }
        for (int i = 0; i < 10; i++) {
            table.append("a,hotel,water,").append(START).append(',').append(START.plusDays(500)).append(",running\n");
        }

        JsonNode fit = json(table.toString()).path("fits").path(0);

        assertThat(fit.path("runs").asInt()).isEqualTo(20);
        assertThat(fit.path("stops").asInt()).isEqualTo(10);
        assertThat(fit.path("shape").path("likeliest").asDouble()).isBetween(1.72075, 1.72085);
        assertThat(fit.path("scaleMonths").path("likeliest").asDouble()).isBetween(19.9265, 19.9275);
    }

    @Test
    void table_fewerThanFiveStops_settingsStay() throws IOException {
        String table = HEAD + "a;hotel;water;2020-01-01;2020-09-01;stopped\n".replace(';', ',').repeat(4)
                + "a,hotel,water,2020-01-01,2020-07-01,cleaned\n";

        FitResult result = fit(table).orElseThrow();

        assertThat(String.join("\n", result.lines())).contains("5 runs, 4 of which ended in a stop.",
                "Fewer than 5 stops say too little", "your settings stay");
        assertThat(result.data().settings()).isEmpty();
    }

    /** What it prints for the shop's file can be put there and is read. */
    @Test
    void demo_linesForTheFile_areReadAndSaidToBeFromVisits() throws IOException {
        FitResult result = written(folder.resolve("records/runs.csv")).orElseThrow();
        List<String> settings = result.data().settings();
        Path rates = folder.resolve("pricing/forecast.yaml");
        String text = Files.readString(rates);
        String lines = String.join("\n", settings.stream().map(String::valueOf).toList()) + "\n\n";
        Files.writeString(rates, text.substring(0, text.indexOf("condenser:  ")) + lines
                + text.substring(text.indexOf("# How much faster dirt works")));

        ShopFolder read = DemoShop.read(folder);

        assertThat(read.problems()).isEmpty();
        assertThat(read.forecast(LocalDate.of(2026, 5, 14)).orElseThrow().water().origin()).isEqualTo(Origin.runs(76));
        assertThat(result.paper().orElseThrow().files().getFirst()).exists();
    }

    /**
     * Half of the sites have yeast, where slime takes 10 months for what it takes 14 for elsewhere (pricing/forecast.yaml: 1.4 times as
     * fast): drawn stops come back to 14, not to about 12 as if all sites were one.
     */
    @Test
    void table_halfOfTheSitesWorse_monthsCountByTheirFactors() throws IOException {
        Random random = new Random(21);
        StringBuilder table = new StringBuilder(HEAD.strip() + ",worse\n");
        for (int i = 0; i < 800; i++) {
            double months = 14 * Math.pow(-Math.log(1 - random.nextDouble()), 1 / 2.5);
            int days = (int) Math.max(1, Math.round((i % 2 == 0 ? months / 1.4 : months) * 365.25 / 12));
            table.append("m").append(i).append(i % 4 == 0 ? ",bakery" : ",hotel").append(",water,").append(START)
                    .append(',').append(START.plusDays(days)).append(",stopped,").append(i % 4 == 2 ? "yeast" : "")
                    .append('\n');
        }

        JsonNode fit = json(table.toString());

        // 4 standard errors of a scale from 800 stops.
        assertThat(fit.path("fits").path(0).path("scaleMonths").path("likeliest").asDouble()).isBetween(13.2, 14.8);
        assertThat(fit.path("settings").valueStream().map(JsonNode::asString)).contains("byKind:", " bakery: {",
                "  water: {", " hotel: {", "  runs: 200}}", "  runs: 800");
        assertThat(String.join(" ", fit(table.toString()).orElseThrow().lines()))
                .contains("clocks of a site where nothing is worse");
    }

    /**
     * Machines whose water gets dirty 0.5, 0.9, 1.7 and 0.9 times as fast by quarter, walked through day by day: page, data and lines for the
     * file have the season; once the lines stand there, they are read, and nothing is left to find.
     */
    @Test
    void table_stopsWithASeason_isFoundAndCanBeSet() throws IOException {
        String table = seasonal(120);

        FitResult result = fit(table).orElseThrow();
        JsonNode json = json(table);

        JsonNode season = json.path("fits").path(0).path("season");
        assertThat(season.path("found").asBoolean()).isTrue();
        assertThat(season.path("chiSquare").asDouble()).isGreaterThan(season.path("foundAbove").asDouble());
        assertThat(season.path("stopsByQuarter")).hasSize(4);
        assertThat(season.path("factorsByQuarter").get(0).asDouble()).isBetween(0.3, 0.7);
        assertThat(season.path("factorsByQuarter").get(2).asDouble()).isBetween(1.4, 2.0);
        assertThat(json.path("fits").path(0).path("shape").path("likeliest").asDouble()).isBetween(2.1, 2.9);
        assertThat(String.join("\n", result.lines())).contains("Stops have a season",
                "The table has no random faults, so whether those have a season was not looked at");
        assertThat(printed(result)).contains("Stops have a season", "seasons:");
        List<String> lines = json.path("settings").valueStream().map(JsonNode::asString).toList();
        assertThat(lines).contains("seasons:");
        Path rates = folder.resolve("pricing/forecast.yaml");
        Files.writeString(rates, Files.readString(rates) + String.join("\n", lines.subList(lines.indexOf("seasons:"),
                lines.size())) + "\n");
        assertThat(DemoShop.read(folder).problems()).isEmpty();
        JsonNode again = json(table);
        assertThat(again.path("fits").path(0).path("season").path("found").asBoolean()).isFalse();
        assertThat(again.path("fits").path(0).path("shape")).isEqualTo(json.path("fits").path(0).path("shape"));
        assertThat(again.path("settings").valueStream().map(JsonNode::asString)).doesNotContain("seasons:");
        assertThat(String.join("\n", fit(table).orElseThrow().lines())).contains("a season beyond those");
    }

    private static String seasonal(int machines) {
        Random random = new Random(20261126);
        double[] speeds = {0.5, 0.9, 1.7, 0.9};
        StringBuilder table = new StringBuilder(HEAD);
        for (int i = 0; i < machines; i++) {
            LocalDate day = START.plusDays(random.nextInt(365));
            LocalDate from = day;
            double age = 0;
            while (day.isBefore(START.plusYears(4))) {
                double later = age + speeds[(day.getMonthValue() - 1) / 3] / day.lengthOfMonth();
                double hazard = Math.pow(later / 13, 2.5) - Math.pow(age / 13, 2.5);
                age = later;
                day = day.plusDays(1);
                if (random.nextDouble() < 1 - Math.exp(-hazard)) {
                    table.append('m').append(i).append(",hotel,water,").append(from).append(',').append(day)
                            .append(",stopped\n");
                    from = day;
                    age = 0;
                }
            }
        }
        return table.toString();
    }

    private static String printed(FitResult result) throws IOException {
        return PrintedQuote.of(result.paper().orElseThrow().files().getFirst()).flowing();
    }

    /** The demo's 28 and 27 stops are enough to look, and show none; four are too few. */
    @Test
    void table_noSeasonOrTooFewStops_saysSo() throws IOException {
        FitResult demo = written(folder.resolve("records/runs.csv")).orElseThrow();
        String few = HEAD + "a,hotel,water,2020-01-01,2020-09-01,stopped\n".repeat(4);

        assertThat(String.join("\n", demo.lines())).contains("No more than chance brings about");
        assertThat(String.join("\n", fit(few).orElseThrow().lines()))
                .contains("Whether stops have a season was not looked at");
        assertThat(json(few).path("fits").path(0).path("season").path("lookedAt").asBoolean()).isFalse();
    }

    /** Stops of machines that calls only restart, drawn from shapes of 2.5 and 2.27; a renewal fit says about 1.5 and 4.7. */
    @ParameterizedTest
    @CsvSource({"2.5, 8, restarts, stopped", "2.27, 30, restarts, stopped", "2.5, 8, resets, restarted"})
    void table_callsOnlyRestart_dirtGoesOn(double shape, double scale, String afterCall, String ended)
            throws IOException {
        Path rates = folder.resolve("pricing/forecast.yaml");
        Files.writeString(rates, Files.readString(rates).replace("afterCall: resets", "afterCall: " + afterCall));
        Random random = new Random(22);
        StringBuilder table = new StringBuilder(HEAD);
        for (int i = 0; i < 250; i++) {
            LocalDate from = START;
            LocalDate end = START.plusDays(540);
            double hazard = -Math.log(1 - random.nextDouble());
            while (true) {
                LocalDate stop = START.plusDays(Math.round(scale * Math.pow(hazard, 1 / shape) * 365.25 / 12));
                if (!stop.isBefore(end)) {
                    break;
                }
                if (stop.isAfter(from)) {
                    table.append("m").append(i).append(",hotel,water,").append(from).append(',').append(stop)
                            .append(',')
                            .append(ended).append('\n');
                    from = stop;
                }
                hazard -= Math.log(1 - random.nextDouble());
            }
            table.append("m").append(i).append(",hotel,water,").append(from).append(',').append(end)
                    .append(",cleaned\n");
        }

        JsonNode fit = json(table.toString()).path("fits").path(0);

        double error = 4 * shape / Math.sqrt(fit.path("stops").asInt());
        assertThat(fit.path("shape").path("likeliest").asDouble()).isBetween(shape - error, shape + error);
        assertThat(fit.path("scaleMonths").path("likeliest").asDouble()).isBetween(scale * 0.8, scale * 1.25);
    }

    /** Machines taken over late, days known to the month, and dirt of which nobody knows since when. */
    @Test
    void table_lateEntriesMonthsAndUnknownDirt_countAsWhatTheyAre() throws IOException {
        Random random = new Random(23);
        StringBuilder table = new StringBuilder(HEAD.strip() + ",watched\n");
        for (int i = 0; i < 1500; i++) {
            int days = (int) Math.ceil(14 * Math.pow(-Math.log(1 - random.nextDouble()), 1 / 2.5) * 365.25 / 12);
            int entered = random.nextInt(365);
            if (days > entered) {
                table.append("m").append(i).append(",hotel,water,").append(START).append(',')
                        .append(i % 2 == 0
                                ? START.plusDays(days).toString()
                                : START.plusDays(days).toString().substring(0, 7))
                        .append(",stopped,").append(entered == 0 ? "" : START.plusDays(entered)).append('\n');
            }
        }
        table.append("x,hotel,water,,2021-05-01,stopped,\n");

        FitResult result = fit(table.toString()).orElseThrow();
        JsonNode fit = JsonMapper.shared().readTree(AnswerMapper.text(result)).path("fits").path(0);

        double error = 4 * 2.5 / Math.sqrt(fit.path("stops").asInt());
        assertThat(fit.path("shape").path("likeliest").asDouble()).isBetween(2.5 - error, 2.5 + error);
        assertThat(fit.path("scaleMonths").path("likeliest").asDouble()).isBetween(13.2, 14.8);
        assertThat(result.lines())
                .anyMatch(line -> line.startsWith("Left out, since nobody knows how long their dirt"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "a,hotel,water,2020-01-01,2020-09,stopped,2020-10-01, | watched | a day from 2020-01-01 on",
            "a,hotel,water,2020-01-01,2020-09,stopped,,yeastt | worse | did you mean \"yeast\"",
            "a,hotel,water,2020-01-01,2020-13,stopped,, | until | or a month, such as 2026-05"})
    void table_wrongOptionalCells_saysWhatIsAllowed(String line, String column, String message) throws IOException {
        List<Problem> problems = fit(HEAD.strip() + ",watched,worse\n" + line + "\n").problems();

        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.place().path()).isEqualTo(column);
            assertThat(problem.text()).contains(message);
        });
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "a,hotel,water,2020-01-01,2019-09-01,stopped | runs.csv:2 | until | a run from 2020-01-01 until 2019-09-01",
            "a,hotel,water,2020-01-01,2020-02-30,stopped | runs.csv:2 | until | found \"2020-02-30\"",
            "a,hotel,water,1926-01-01,2020-09-01,stopped | runs.csv:2 | from | the day is 1926-01-01",
            "a,hotel,water,2020-01-01,9999-12,stopped | runs.csv:2 | until | the day is 9999-12-01",
            "a,hostel,water,2020-01-01,2020-09-01,stopped | runs.csv:2 | kind | did you mean \"hotel\"",
            "a,hotel,wather,2020-01-01,2020-09-01,stopped | runs.csv:2 | side | did you mean \"water\"",
            "a,hotel,water,2020-01-01,2020-09-01,stoped | runs.csv:2 | ended | did you mean \"stopped\"",
            "a,hotel,water,2020-01-01,2020-09-01 | runs.csv:2 | ended | found \"\"",
            "a,hotel,water,2020-01-01,2020-09-01,stopped,hot | runs.csv:2 | '' | 7 cells, but the head has 6"})
    void table_wrong_saysLineAndColumn(String line, String where, String column, String message) throws IOException {
        List<Problem> problems = fit(HEAD + line + "\n").problems();

        assertThat(problems).singleElement().satisfies(problem -> {
            assertThat(problem.place().reference()).endsWith(where);
            assertThat(problem.place().path()).isEqualTo(column);
            assertThat(problem.text()).contains(message);
        });
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void table_withoutColumnsOrEmpty_saysWhichAreNeeded() throws IOException {
        assertThat(fit("machine,kind,side,from\n").problems()).extracting(Problem::message)
                .containsExactly("the column is missing", "the column is missing");
        assertThat(fit("").problems()).hasSize(6);
    }

    /** What spreadsheets make of a table: commas and quotes within cells, other columns, names in capitals, semicolons. */
    @ParameterizedTest
    @ValueSource(strings = {"a,hotel,water,2020-01-01,2020-09-01,stopped,",
            "\"Bar, 2nd \"\"floor\"\"; left\",hotel,water,2020-01-01,2020-09-01,stopped,\"hot; dusty, too\"",
            "\"two\nlines\",hotel,water,2020-01-01,2020-09-01,stopped,x"})
    void table_quotedCells_areReadWhole(String row) throws IOException {
        String commas = "Machine,Kind,Side,From,Until,Ended,note\n" + (row + "\n").repeat(4);

        assertThat(fit(commas).orElseThrow().lines()).anyMatch(text -> text.contains("4 runs, 4 of which"));
        assertThat(fit(commas.replace(',', '\u0001').replace(';', ',').replace('\u0001', ';')).orElseThrow().lines())
                .anyMatch(text -> text.contains("4 runs, 4 of which"));
    }

    /** A semicolon in one cell does not make it what parts the cells. */
    @Test
    void table_twoSeparators_onlyTheHeadsCounts() throws IOException {
        List<Problem> problems = fit(HEAD + "a,hotel,water,2020-01-01,2020-09-01,stopped\n"
                + "a;hotel;water;2020-01-01;2020-09-01;stopped\n").problems();

        assertThat(problems).isNotEmpty().allSatisfy(problem -> assertThat(problem.place().line()).isEqualTo(3));
    }

    @Test
    void table_inWindows1252_saysOnWhichLine() throws IOException {
        Path file = temporary.resolve("runs.csv");
        Files.write(file, (HEAD + "a,hotel,water,2020-01-01,2020-09-01,stopped\n"
                + "caf\u00e9,hotel,water,2020-01-01,2020-09-01,stopped\n").getBytes(StandardCharsets.ISO_8859_1));

        assertThat(written(file).problems()).singleElement()
                .satisfies(problem -> {
                    assertThat(problem.place().line()).isEqualTo(3);
                    assertThat(problem.text()).contains("Windows-1252", "UTF-8");
                });
    }

    private JsonNode json(String table) throws IOException {
        return JsonMapper.shared().readTree(AnswerMapper.text(fit(table).orElseThrow()));
    }

    private Validated<FitResult> fit(String table) throws IOException {
        Path file = temporary.resolve("runs.csv");
        Files.writeString(file, table);
        return written(file);
    }

    private Validated<FitResult> written(Path table) {
        FitOffice office = DemoShop.office(folder).fits();
        return office.table(table, paperOptions()).then(fit -> office.write(fit, paperOptions()));
    }

    private static PaperOptions paperOptions() {
        return new PaperOptions(Optional.empty(), LocalDate.of(2026, 5, 14), Optional.of(Language.ENGLISH),
                Extras.NONE);
    }
}
