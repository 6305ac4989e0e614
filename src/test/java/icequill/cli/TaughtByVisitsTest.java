package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What a book of fourteen months teaches. Both piers have one machine cooled by air, cleaned on 5 January 2026. Of the north one dirty
 * condensers brought calls after 60, 90 and, from a brushing after 30 days on, 110 days; it has run for 130 days since. Of the south
 * one they did after 100, 110 and 60 days, the last by what was written down, since all of it was cleaned then; it has run for 150.
 */
@Tag("wide")
class TaughtByVisitsTest {

    private static final Clock LATER = Clock.fixed(Instant.parse("2027-03-01T17:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate START = LocalDate.of(2026, 1, 5);
    private static final double DAYS_OF_A_MONTH = 30.4375;
    private static final String BRUSHED = "{task: brush-condenser}";
    private static final String WATER = "{task: stop-and-empty}, {task: wash-parts}, {task: circulate-descaler},"
            + " {task: flush}, {task: sanitize}, {task: clean-bin}, {task: restart}";
    private static final String FULL = BRUSHED + ", " + WATER;

    @TempDir
    static Path temporary;

    private static BookShop shop = new BookShop(Path.of(""));

    @BeforeAll
    static void fourteenMonths() throws IOException {
        shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        run("customer", "add", "pier-kitchens", "--name", "Pier Kitchens", "--street", "1 Pier", "--city", "Alderton",
                "--region", "NY", "--postal-code", "10999", "--country", "US");
        site("north-pier");
        site("south-pier");
        visit("n1", "north-pier", 0, "", FULL, "");
        visit("n2", "north-pier", 60, "Too warm", BRUSHED, "");
        visit("n3", "north-pier", 150, "Too warm", BRUSHED, "");
        visit("n4", "north-pier", 180, "", BRUSHED, "");
        visit("n5", "north-pier", 290, "Too warm", BRUSHED, "");
        visit("n6", "north-pier", 300, "No ice", "", "");
        visit("s1", "south-pier", 0, "", FULL, "");
        visit("s2", "south-pier", 100, "Too warm", BRUSHED, "");
        visit("s3", "south-pier", 210, "Too warm", BRUSHED, "");
        visit("s4", "south-pier", 270, "No ice", FULL, ", side: condenser");
        run("visit", "withdraw", "n6", "--reason", "another customer's");
        visit("n7", "north-pier", 301, "No ice", "", "");
    }

    private static void site(String id) {
        run("site", "add", id, "--customer", "pier-kitchens", "--name", id, "--street", "1 Pier", "--city", "Alderton",
                "--region", "NY", "--postal-code", "10999", "--country", "US", "--kind", "restaurant", "--miles", "3",
                "--tax-place", "alder-county");
        run("machine", "add", id, "bar", "--model", "Cuber 300", "--where", "bar", "--make", "batch", "--form", "head",
                "--cooling", "air", "--harvest-rate", "300", "--connection", "hard-wired");
    }

    /** @param day from the first */
    private static void visit(String id, String site, int day, String symptom, String tasks, String side)
            throws IOException {
        LocalDate on = START.plusDays(day);
        String asked = symptom.isEmpty() ? "" : "asked: {by: Jo, at: " + on + "T08:00, symptom: " + symptom + "}\n";
        run("visit", "add", shop.write("visits/" + id + ".yaml", """
                format: 1
                site: %s
                %speople:
                  - {name: %s, grade: lead, arrived: %sT09:00, left: %sT10:00, on: diagnosis}
                machines:
                  - {machine: bar, tasks: [%s]%s}
                """.formatted(site, asked, site.startsWith("n") ? "Ada" : "Rosa", on, on, tasks, side)).toString());
    }

    private static JsonNode run(String... args) {
        List<String> line = new ArrayList<>(List.of(args));
        line.add("--json");
        Run run = shop.runAt(LATER, line.toArray(String[]::new));
        assertThat(run.status()).as(String.join(" ", args) + run.out() + run.err()).isZero();
        return run.json();
    }

    /**
     * The likeliest clock solves two equations (NIST/SEMATECH e-Handbook 8.4.1.3), here worked out from the days above alone: the stops
     * are as many as the sum of (t / scale) ^ shape, and the mean logarithm of the stops' times is that of all times, weighed by t ^ shape,
     * less 1 / shape.
     */
    @Test
    void fit_withoutATable_isThatOfTheVisits() {
        double[] stops = months(60, 90, 110, 100, 110, 60);
        double[] all = months(60, 90, 110, 100, 110, 60, 30, 130, 150);

        JsonNode fit = run("fit").path("fits").path(0);
        double shape = fit.path("shape").path("likeliest").asDouble();
        double scale = fit.path("scaleMonths").path("likeliest").asDouble();

        assertThat(fit.path("side").asString()).isEqualTo("condenser");
        assertThat(fit.path("runs").asInt()).isEqualTo(9);
        assertThat(fit.path("stops").asInt()).isEqualTo(6);
        double weights = DoubleStream.of(all).map(t -> Math.pow(t, shape)).sum();
        assertThat(weights / Math.pow(scale, shape)).isEqualTo(6, within(1e-4));
        assertThat(DoubleStream.of(all).map(t -> Math.pow(t, shape) * Math.log(t)).sum() / weights - 1 / shape)
                .isEqualTo(DoubleStream.of(stops).map(Math::log).average().orElseThrow(), within(1e-4));
    }

    private static double[] months(int... days) {
        return Arrays.stream(days).mapToDouble(day -> day / DAYS_OF_A_MONTH).toArray();
    }

    /** Seven calls, of which one said nothing and did nothing; one that was withdrawn is none. */
    @Test
    void fit_saysWhatItIsFrom_andThatTheOtherSideHasTooFew() {
        String said = shop.runAt(LATER, "fit").out().replace('\u00a0', ' ');

        assertThat(said).contains("From 10 visits at 2 of our sites since January 5, 2026. Of 7 calls by customers"
                + " nobody wrote down for 1");
        assertThat(said).contains("Scale and slime, all sites together\n  3 runs, 0 of which ended in a stop.\n"
                + "  Fewer than 5 stops say too little: your settings stay.");
    }

    private static JsonNode compared(String name, String more) throws IOException {
        Path request = shop.write(name + ".yaml", """
                format: 1
                form: maintenance-request
                site: south-pier
                start: 2027-04-01
                months: 12
                billing: yearly
                holdsDays: 30
                emptiesBin: shop
                tiers: [semiannual]
                minutes: {full-clean: 60, light-visit: 20}
                %s""".formatted(more));
        return run("compare", request.toString(), "--years", "1").path("forecast").path("inputs");
    }

    /** South: cleaned on 5 January and, by a call, on day 270; three calls in the year before 1 March 2027, all for the condenser. */
    @Test
    void compare_requestThatSaysNothing_goesByTheVisits() throws IOException {
        JsonNode inputs = compared("silent", "");
        JsonNode recorded = inputs.path("recorded");

        assertThat(recorded.path("visits").asInt()).isEqualTo(4);
        assertThat(recorded.path("since").asString()).isEqualTo("2026-01-05");
        assertThat(recorded.path("wholeYear").asBoolean()).isTrue();
        assertThat(recorded.path("callsOfLastYear").toString())
                .isEqualTo("{\"condenser\":3,\"water\":0,\"other\":0,\"unknown\":0}");
        JsonNode brushed = recorded.path("machines").path(0).path("brushed");
        assertThat(brushed.path("day").asString()).isEqualTo("2026-10-02");
        assertThat(brushed.path("visit").asString()).isEqualTo("s4");
        assertThat(brushed.path("people").toString()).isEqualTo("[\"Rosa\"]");
        assertThat(inputs.path("machines").path(0).path("lastCleaned").asString()).isEqualTo("2026-10-02");
        assertThat(inputs.path("machines").path(0).path("monthsSinceBrushed").asDouble())
                .isEqualTo(150 / DAYS_OF_A_MONTH, within(1e-6));
    }

    /** What is typed wins, and what the book has stands beside it. */
    @Test
    void compare_requestThatSaysWhen_goesByThat() throws IOException {
        JsonNode inputs = compared("told", """
                forecast:
                  machines: [{machine: bar, lastCleaned: 2027-01-30}]
                """);

        assertThat(inputs.path("machines").path(0).path("lastCleaned").asString()).isEqualTo("2027-01-30");
        assertThat(inputs.path("machines").path(0).path("monthsSinceCleaned").asDouble())
                .isEqualTo(30 / DAYS_OF_A_MONTH, within(1e-6));
        assertThat(inputs.path("recorded").path("machines").path(0).path("cleaned").path("day").asString())
                .isEqualTo("2026-10-02");
    }
}
