package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Last year's forecast against a book of fourteen months. North Pier has a machine cooled by air, cleaned on 15 January, brushed
 * on 1 June and cleaned on 1 September; South Pier one cooled by water, which a call cleaned on 10 February. The year begins on
 * 1 March 2026, 1.478439 and 0.624230 months of 30.4375 days later.
 */
@Tag("wide")
class HindsightTest {

    private static final Clock LATER = Clock.fixed(Instant.parse("2027-03-01T17:00:00Z"), ZoneOffset.UTC);
    private static final double SINCE_NORTH = 45 / 30.4375;
    private static final double SINCE_SOUTH = 19 / 30.4375;
    private static final double DIGITS = 1e-6;
    private static final String FULL = "{task: brush-condenser}, " + waterTasks();

    @TempDir
    static Path common;

    @TempDir
    Path temporary;

    private static BookShop filled = new BookShop(Path.of(""));

    private BookShop shop = filled;

    private static String waterTasks() {
        return "{task: stop-and-empty}, {task: wash-parts}, {task: circulate-descaler}, {task: flush}, {task: sanitize},"
                + " {task: clean-bin}, {task: restart}";
    }

    @BeforeAll
    static void fourteenMonths() throws IOException {
        filled = BookShop.in(common.resolve("shop"), Database.SQLITE);
        new HindsightTest().fill();
    }

    @BeforeEach
    void copy() throws IOException {
        shop = new BookShop(temporary.resolve("shop"));
        try (Stream<Path> files = Files.walk(filled.folder())) {
            for (Path file : files.toList()) {
                Files.copy(file, shop.folder().resolve(filled.folder().relativize(file)));
            }
        }
    }

    private void fill() throws IOException {
        forecast("sitesDiffer: {usual: 30, low: 15, high: 50}", "sitesDiffer: {usual: 0, low: 0, high: 0}");
        run("customer", "add", "pier-kitchens", "--name", "Pier Kitchens", "--street", "1 Pier", "--city", "Alderton",
                "--region", "NY", "--postal-code", "10999", "--country", "US");
        site("north-pier", "air");
        site("south-pier", "water");
        visit("n1", "north-pier", "2026-01-15", "", FULL, "");
        visit("n2", "north-pier", "2026-06-01", "", "{task: brush-condenser}", "");
        visit("n3", "north-pier", "2026-07-10", "Too warm", "{task: brush-condenser}", "");
        visit("n4", "north-pier", "2026-09-01", "", FULL, "");
        visit("n5", "north-pier", "2026-11-05", "No water", "", "lines: [{material: float-switch, amount: 1}]");
        visit("n6", "north-pier", "2027-01-20", "No ice", "", "");
        visit("n7", "north-pier", "2027-02-05", "Leaks", "", "serviceCall: callback");
        visit("s1", "south-pier", "2026-02-10", "Cloudy ice", waterTasks(), "");
        visit("s2", "south-pier", "2026-10-01", "Noise", "", "");
        run("visit", "withdraw", "s2", "--reason", "another customer's");
    }

    private void site(String id, String cooling) {
        run("site", "add", id, "--customer", "pier-kitchens", "--name", id, "--street", "1 Pier", "--city", "Alderton",
                "--region", "NY", "--postal-code", "10999", "--country", "US", "--kind", "restaurant", "--miles", "3",
                "--tax-place", "alder-county");
        run("machine", "add", id, "bar", "--model", "Cuber 300", "--where", "bar", "--make", "batch", "--form", "head",
                "--cooling", cooling, "--harvest-rate", "300", "--connection", "hard-wired");
    }

    private void visit(String id, String site, String day, String symptom, String tasks, String more)
            throws IOException {
        String asked = symptom.isEmpty() ? "" : "asked: {by: Jo, at: " + day + "T08:00, symptom: " + symptom + "}\n";
        Path file = shop.write("visits/" + id + ".yaml", """
                format: 1
                site: %s
                %s%s
                people:
                  - {name: Rosa, grade: lead, arrived: %sT09:00, left: %sT10:00, on: diagnosis}
                machines:
                  - {machine: bar, tasks: [%s]}
                """.formatted(site, asked, more, day, day, tasks));
        run("visit", "add", file.toString());
    }

    private JsonNode run(String... args) {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--json");
        Run run = shop.runAt(LATER, line.toArray(String[]::new));
        assertThat(run.status()).as(String.join(" ", args) + run.out() + run.err()).isZero();
        return run.json();
    }

    private List<String> problems(String... args) {
        Run run = shop.runAt(LATER, args);
        assertThat(run.status()).as(run.out()).isEqualTo(3);
        return run.err().lines().toList();
    }

    private void forecast(String from, String to) throws IOException {
        Path file = shop.folder().resolve("pricing/forecast.yaml");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    /**
     * Where no call cleans, the stops of a side are a Poisson number of H(until) - H(from), H(t) = (t / scale) ^ shape, so that all
     * can be added up by hand: by 6 and 12 months 2 and 9 of 20 make a shape of 2.504418 and a scale of 14.736369, 2 and 8 make
     * 2.277497 and 16.116564.
     */
    @Test
    void callsThatCleanNothing_addUpByHand() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");

        JsonNode year = run("call", "review");

        assertThat(year.path("from").asString()).isEqualTo("2026-03-01");
        assertThat(year.path("until").asString()).isEqualTo("2027-02-28");
        expected(site(year, 0), "north-pier", 0.314149, 0.696441, 1.316067);
        expected(site(year, 1), "south-pier", 0.348062, 0.822757, 1.539315);
        expected(year.path("all"), "all", 0.662212, 1.519198, 2.855381);
        expected(year.path("causes").get(0), "random", 0.2, 0.5, 1.0);
        expected(year.path("causes").get(1), "condenser", 0.083644, 0.171420, 0.376904);
        expected(year.path("causes").get(2), "water", 0.378568, 0.847778, 1.478477);
        assertThat(year.path("all").path("expected").path("usual").asDouble()).isCloseTo(byHand(), within(DIGITS));
    }

    /** The same sum, worked out from what the shop counts. */
    private static double byHand() {
        double condenser = hazard(9, SINCE_NORTH, 3) + hazard(9, 0, 3) + hazard(9, 0, 6);
        double water = hazard(8, SINCE_NORTH, 6) + hazard(8, 0, 6) + hazard(8, SINCE_SOUTH, 12);
        return condenser + water + 2 * 0.25;
    }

    private static double hazard(int by12, double age, double months) {
        double shape = Math.log(Math.log(1 - by12 / 20.0) / Math.log(1 - 2 / 20.0)) / Math.log(2);
        return -Math.log(1 - by12 / 20.0)
                * (Math.pow((age + months) / 12, shape) - Math.pow(age / 12, shape));
    }

    private static JsonNode site(JsonNode year, int number) {
        return year.path("sites").get(number);
    }

    private static void expected(JsonNode row, String name, double careful, double usual, double gloomy) {
        assertThat(row.iterator().next().asString()).isEqualTo(name);
        assertThat(row.path("expected").path("careful").asDouble()).as(name).isCloseTo(careful, within(DIGITS));
        assertThat(row.path("expected").path("usual").asDouble()).as(name).isCloseTo(usual, within(DIGITS));
        assertThat(row.path("expected").path("gloomy").asDouble()).as(name).isCloseTo(gloomy, within(DIGITS));
    }

    /**
     * Of a mean of 0.696441, three calls or more come in 3.3 of 100 years, two or more in 15.4; of 1.519198 three or more in 19.5, four
     * or more in 7.1. Three calls are likelier by the gloomy guess: 2.855381^3 / 6 e^-2.855381 = 0.2232, against 0.1279.
     */
    @Test
    void calls_areCountedByWhatTheyCleaned() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");

        JsonNode year = run("call", "review");

        had(site(year, 0), 3, 3, 0, 2, "more", "gloomy");
        had(site(year, 1), 0, 0, 0, 2, "fits", "careful");
        had(year.path("all"), 3, 3, 0, 3, "fits", "gloomy");
        assertThat(year.path("all").path("chances").path("gloomy").asDouble()).isCloseTo(0.2232, within(5e-5));
        assertThat(year.path("all").path("chances").path("usual").asDouble()).isCloseTo(0.1279, within(5e-5));
        had(year.path("causes").get(0), 1, 2, 0, 1, "fits", "gloomy");
        had(year.path("causes").get(1), 1, 2, 0, 1, "fits", "gloomy");
        had(year.path("causes").get(2), 0, 1, 0, 2, "fits", "careful");
        assertThat(year.path("callsOfUnknownCause").asInt()).isEqualTo(1);
        assertThat(year.path("callbacks").asInt()).isEqualTo(1);
        assertThat(year.path("sitesWithoutVisit").get(0).asString()).isEqualTo("south-pier");
    }

    private static void had(JsonNode row, int atLeast, int atMost, int low, int high, String fit, String closest) {
        assertThat(List.of(row.path("calls").asInt(), row.path("callsAtMost").asInt(), row.path("low").asInt(),
                row.path("high").asInt())).as(row.toString()).containsExactly(atLeast, atMost, low, high);
        assertThat(row.path("fit").asString()).as(row.toString()).isEqualTo(fit);
        assertThat(row.path("closestGuess").asString()).as(row.toString()).isEqualTo(closest);
    }

    /**
     * Sites differ by 50 %, and each machine and cause of a site shares how bad it is: where no call cleans, the calls of a site of
     * a mean m are then a negative binomial number of size 1 / 0.5^2 = 4. Sites do not depend on each other.
     */
    @Test
    void sitesThatDiffer_stopTogetherWithin() throws IOException {
        forecast("sitesDiffer: {usual: 0, low: 0, high: 0}", "sitesDiffer: {usual: 50, low: 30, high: 60}");
        forecast("afterCall: resets", "afterCall: restarts");

        JsonNode year = run("call", "review");

        expected(site(year, 0), "north-pier", 0.314149, 0.696441, 1.316067);
        expected(year.path("all"), "all", 0.662212, 1.519198, 2.855381);
        double near = 1e-5;
        assertThat(chance(site(year, 0), "usual")).isCloseTo(negativeBinomial(3, 0.696441), within(near));
        assertThat(chance(site(year, 0), "gloomy")).isCloseTo(negativeBinomial(3, 1.316067), within(near));
        double three = 0;
        double two = 0;
        for (int north = 0; north <= 3; north++) {
            three += negativeBinomial(north, 0.696441) * negativeBinomial(3 - north, 0.822757);
        }
        assertThat(chance(year.path("all"), "usual")).isCloseTo(three, within(near));
        // The condenser at North Pier alone, one call or two; the water at both, none or one.
        assertThat(chance(year.path("causes").get(1), "usual"))
                .isCloseTo(negativeBinomial(1, 0.171420) + negativeBinomial(2, 0.171420), within(near));
        double north = 0.847778 - (0.822757 - 0.25);
        for (int at = 0; at <= 1; at++) {
            for (int other = 0; at + other <= 1; other++) {
                two += negativeBinomial(at, north) * negativeBinomial(other, 0.822757 - 0.25);
            }
        }
        assertThat(chance(year.path("causes").get(2), "usual")).isCloseTo(two, within(near));
        // As if machines and causes did not depend on each other, three calls would come in 0.1279 of years.
        assertThat(three).isLessThan(0.125);
    }

    private static double chance(JsonNode row, String guess) {
        return row.path("chances").path(guess).asDouble();
    }

    /** By the recurrence p(n + 1) / p(n) = (4 + n) / (n + 1) * mean / (4 + mean). */
    private static double negativeBinomial(int calls, double mean) {
        double chance = Math.pow(4 / (4 + mean), 4);
        for (int n = 0; n < calls; n++) {
            chance *= (4.0 + n) / (n + 1) * mean / (4 + mean);
        }
        return chance;
    }

    /** A call cleans its side: 400,000 years of both sites, each side's stops drawn one after another. */
    @Test
    void callsThatClean_asDrawnByChance() {
        Random random = new Random(20270301);
        int years = 400_000;
        long[] water = new long[2];
        long condenser = 0;
        for (int i = 0; i < years; i++) {
            condenser += stops(random, 9, SINCE_NORTH, 3, 3, 6);
            water[0] += stops(random, 8, SINCE_NORTH, 6, 6);
            water[1] += stops(random, 8, SINCE_SOUTH, 12);
        }

        JsonNode year = run("call", "review");

        // Three standard errors: none of these numbers spreads by more than 0.8.
        double near = 3 * 0.8 / Math.sqrt(years);
        assertThat(usual(year.path("causes").get(1))).isCloseTo((double) condenser / years, within(near));
        assertThat(usual(site(year, 0)) - usual(year.path("causes").get(1)) - 0.25)
                .isCloseTo((double) water[0] / years, within(near));
        assertThat(usual(site(year, 1)) - 0.25).isCloseTo((double) water[1] / years, within(near));
    }

    private static double usual(JsonNode row) {
        return row.path("expected").path("usual").asDouble();
    }

    private static int stops(Random random, int by12, double since, double... stretches) {
        double shape = Math.log(Math.log(1 - by12 / 20.0) / Math.log(1 - 2 / 20.0)) / Math.log(2);
        double scale = 12 / Math.pow(-Math.log(1 - by12 / 20.0), 1 / shape);
        int stops = 0;
        double age = since;
        for (double stretch : stretches) {
            double left = stretch;
            double next = next(random, shape, scale, age);
            while (next < left) {
                stops++;
                left -= next;
                next = next(random, shape, scale, 0);
            }
            age = 0;
        }
        return stops;
    }

    private static double next(Random random, double shape, double scale, double age) {
        double grown = Math.pow(age / scale, shape) - Math.log(1 - random.nextDouble());
        return scale * Math.pow(grown, 1 / shape) - age;
    }

    @Test
    void screen_saysWhatToMakeOfIt() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");
        site("east-pier", "air");
        visit("e1", "east-pier", "2026-12-01", "No ice", "", "");

        String text = shop.runAt(LATER, "call", "review").out();

        assertThat(text).contains("from 2026-03-01 to 2027-02-28")
                .containsPattern("north-pier +0\\.7 +0 to 2 +3 +more than the usual guess allows +gloomy")
                .containsPattern("all +1\\.5 +0 to 3 +3 +fits the usual guess +gloomy")
                .containsPattern("condenser +0\\.2 +0 to 1 +1 to 2 +fits the usual guess +gloomy")
                .contains("The record fits the usual guess: in 8 years of 10 or more there are 0 to 3 calls.",
                        "The guesses are those of 2026-03-01, when the year began.",
                        "1 of 3 calls do not say what they were for",
                        "Calls back to our own work, not counted, since no machine is to blame: 1.",
                        "Nobody was there in that year, so see whether they are customers still: south-pier.",
                        "the book has less than a year of them: east-pier (it has on 2027-12-01).");
    }

    /** South Pier alone, where 0.822757 calls were to be expected, with five. */
    @Test
    void moreThanAllowed_namesTheCloserGuess() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");
        for (int i = 1; i <= 5; i++) {
            visit("more" + i, "south-pier", "2026-0" + (i + 3) + "-02", "No ice", waterTasks(), "");
        }

        JsonNode year = run("call", "review");

        had(year.path("causes").get(2), 5, 6, 0, 2, "more", "gloomy");
        assertThat(year.path("notes").get(0).asString())
                .isEqualTo("More calls came than the usual guess allows (0 to 3);"
                        + " the gloomy guess is closer, which expects 2.9. See which cause it is, and fit your records:"
                        + " icequill fit.");
    }

    /** A cleaning that takes away half leaves dirt of half the age: H from 0.739220, and 3.739220 / 2 and so on. */
    @Test
    void cleaningsThatRestoreHalf_leaveDirt() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");
        forecast("restores: {cleaning: 100, brushing: 100}", "restores: {cleaning: 100, brushing: 50}");
        // Nobody knows of a brushing before 15 January: twelve months are taken.
        double begins = 12 / 2.0 + SINCE_NORTH;
        double june = (begins + 3) / 2;
        double september = (june + 3) / 2;

        JsonNode year = run("call", "review");

        assertThat(usual(year.path("causes").get(1))).isCloseTo(
                hazard(9, begins, 3) + hazard(9, june, 3) + hazard(9, september, 6), within(DIGITS));
    }

    @Test
    void newMachine_countsFromItsFirstDay() throws IOException {
        forecast("afterCall: resets", "afterCall: restarts");
        run("machine", "change", "south-pier", "bar", "--installed", "2026-09-01");

        JsonNode year = run("call", "review");

        assertThat(usual(site(year, 1))).isCloseTo(hazard(8, 0, 6) + 0.25 / 2, within(DIGITS));
    }

    @Test
    void bookOfLessThanAYear_saysWhenItHasOne() {
        assertThat(problems("call", "review", "--date", "2026-12-01").getFirst()).contains(
                "the book has less than a year: its first visit was on 2026-01-15, after 2025-12-01",
                "from 2027-01-15 on, or with --date 2027-01-15");
        assertThat(run("call", "review", "--date", "2027-01-15").path("sites")).hasSize(1);
    }

    @Test
    void guessesBegunLater_areSaidToBe() throws IOException {
        forecast("effective: {from: 2026-01-01}", "effective: {from: 2026-05-01}");

        assertThat(run("call", "review").path("notes").get(1).asString()).isEqualTo(
                "The guesses are those of 2027-03-01, since pricing/ has none of 2026-03-01, when the year began.");
    }

    @Test
    void sitesOfTheForgotten_areLeftOut() {
        run("invoice", "issue", "--all");
        run("customer", "forget", "pier-kitchens", "--yes");

        assertThat(problems("call", "review").getFirst()).contains("the book has no visits to look back on");
    }

    @Test
    void withoutForecastOrBook_saysWhatIsMissing() throws IOException {
        Files.delete(shop.folder().resolve("pricing/forecast.yaml"));
        assertThat(problems("call", "review").getFirst()).contains("there is nothing to forecast by on 2026-03-01",
                "a file of kind: forecast");

        shop = BookShop.in(temporary.resolve("other"), Database.SQLITE);
        assertThat(problems("call", "review").getFirst()).contains("the book has no visits to look back on");
    }
}
