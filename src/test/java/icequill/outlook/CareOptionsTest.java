package icequill.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.answer.ComparisonResult;
import icequill.files.answer.AnswerMapper;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Ways of care of the invented shop's sites are compared for the same scope: catching up, included calls, cleanings by the calendar.
 * Figures without a derivation were confirmed by an independent program.
 */
@Tag("wide")
class CareOptionsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 20);
    private static final String BAKERY = "quotes/crumb-lane-plan.yaml";
    private static final String MERCADO = "quotes/plan-mercado.yaml";
    private static final String FERNHILL = "quotes/fernhill-plan.yaml";
    private static final double CENT = 0.006;
    /** Of the shop as it is shipped, but with sites alike. */
    private static final Map<String, JsonNode> AS_SHIPPED = new HashMap<>();

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    /** The figures here are those of sites that are all alike. */
    @BeforeEach
    void shop() throws IOException {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
        alike();
    }

    /** 650.00 + 153.79 + 235.51 for calls. */
    @Test
    void catchingUp_neglectedMachine_belongsToTheFirstYear() {
        JsonNode options = asShipped(BAKERY).path("options");
        JsonNode semiannual = options.path("semiannual");

        assertThat(semiannual.path("catchingUp").asDecimal()).isEqualByComparingTo("153.79");
        assertThat(semiannual.path("total").path("mean").asDouble()).isCloseTo(1039.30, within(CENT));
        assertThat(semiannual.path("chanceCheaperThanPayPerCall").path("1").asDouble()).isCloseTo(0.217, within(5e-4));
        // Three years pay it once.
        assertThat(semiannual.path("horizon").path("plannedPrice").asDecimal()).isEqualByComparingTo("2103.79");
        assertThat(options.path("payPerCall").path("catchingUp").asDecimal()).isEqualByComparingTo("0");
        assertThat(asShipped(MERCADO).path("options").path("semiannual").path("catchingUp").asDecimal())
                .isEqualByComparingTo("0");
    }

    /**
     * A full cleaning costs 377.16 on average: 120 minutes are billed, since with the filter it takes 107, in which the bin is
     * cleaned with the auger locked out and not while it circulates. Calls of a year after one come to 303.65, after three to 148.59.
     */
    @ParameterizedTest
    @CsvSource({"60, 377.16, 680.81, 377.16", "18, 377.16, 680.81, 754.32", "5, 1131.48, 1280.07, 3017.28"})
    void interval_anyMonths_yearsPayTheCleaningsThatFallIntoThem(int months, double first, double total, double three) {
        JsonNode way = json(MERCADO, new LookAhead(Optional.of(3), Optional.of(months)))
                .path("every" + months + "Months");

        assertThat(way.path("plannedPrice").asDouble()).isCloseTo(first, within(CENT));
        assertThat(way.path("total").path("mean").asDouble()).isCloseTo(total, within(CENT));
        assertThat(way.path("horizon").path("plannedPrice").asDouble()).isCloseTo(three, within(CENT));
    }

    /** The quarterly plan costs less than its cleanings booked singly, and its calls are discounted: it cannot be the dearer one. */
    @ParameterizedTest
    @CsvSource({BAKERY + ", quarterly", MERCADO + ", semiannual", FERNHILL + ", semiannual"})
    void plan_sameCleaningsCheaperPerVisitAndPerCall_isAlwaysCheaper(String file, String plan) {
        JsonNode options = asShipped(file).path("options");
        JsonNode chance = options.path(plan).path("chanceCheaperThanBookedSingly");

        assertThat(chance.values()).extracting(JsonNode::asDouble).containsExactly(1.0, 1.0, 1.0);
        assertThat(options.path("bookedSingly").path("total").path("mean").asDouble())
                .isGreaterThan(options.path(plan).path("total").path("mean").asDouble());
    }

    /** Of 0.5496 calls a year 0.0197 are a third or a later one, at 250.75 on average (137.80 / 0.5496). */
    @Test
    void includedCalls_areNotChargedAgain() throws IOException {
        double charged = asShipped(BAKERY).path("options").path("quarterly").path("charges").path("mean").asDouble();
        includeCalls(2);

        JsonNode quarterly = json(BAKERY).path("quarterly");

        assertThat(charged).isCloseTo(137.80, within(CENT));
        assertThat(quarterly.path("includedCalls").asInt()).isEqualTo(2);
        assertThat(quarterly.path("charges").path("mean").asDouble()).isBetween(3.0, 7.0);
        assertThat(quarterly.path("expectedCalls").asDouble()).isCloseTo(0.5496, within(5e-5));
        assertThat(quarterly.path("total").path("mean").asDouble()).isCloseTo(
                quarterly.path("plannedPrice").asDouble() + 153.79 + quarterly.path("charges").path("mean").asDouble(),
                within(CENT));
    }

    @Test
    void includedCalls_theMoreTheLessIsCharged() throws IOException {
        double before = asShipped(FERNHILL).path("options").path("quarterly").path("charges").path("mean").asDouble();
        for (int calls = 1; calls <= 3; calls++) {
            DemoShop.files(temporary.resolve("with" + calls));
            folder = temporary.resolve("with" + calls);
            alike();
            includeCalls(calls);
            JsonNode now = json(FERNHILL).path("quarterly");
            assertThat(now.path("charges").path("mean").asDouble()).isLessThan(before);
            assertThat(now.path("horizon").path("charges").path("mean").asDouble())
                    .isCloseTo(3 * now.path("charges").path("mean").asDouble(), within(1.0));
            before = now.path("charges").path("mean").asDouble();
        }
    }

    /** Machines that stop without regard to each other, whose forecast takes an eighth of the time. */
    private void alike() throws IOException {
        Path rates = folder.resolve("pricing/forecast.yaml");
        String shipped = Files.readString(rates);
        Files.writeString(rates, shipped.replaceFirst("(?m)^sitesDiffer: [^}]*}",
                "sitesDiffer: {usual: 0, low: 0, high: 0}"));
        assertThat(rates).content().isNotEqualTo(shipped);
    }

    private void includeCalls(int calls) throws IOException {
        Path tiers = folder.resolve("pricing/tiers.yaml");
        String text = Files.readString(tiers);
        int quarterly = text.indexOf("  - id: quarterly");
        Files.writeString(tiers, text.substring(0, quarterly) + text.substring(quarterly)
                .replaceFirst("    discount:",
                        "    includedCalls: {number: " + calls + ", loading: 15}\n    discount:"));
        for (String file : new String[]{BAKERY, FERNHILL}) {
            Files.writeString(folder.resolve(file),
                    "includedCalls: {expected: 0.5, meanCharge: 250.00, meanCost: 100.00}\n",
                    StandardOpenOption.APPEND);
        }
    }

    /**
     * Open in June, July and August, a site gets one visit a year by both plans. Its machine runs three months a year: by the shop's
     * guesses water stops 8 and dust 9 of 20 by month 12, 2 by month 6. Nobody knows the last cleaning: twelve months, three of
     * them run.
     */
    @Test
    void season_threeMonths_callsFollowTheRealVisitsAndIdleMachinesDoNotStop() throws IOException {
        change("sites/mercado-del-mar.yaml", "machines:", "season: [june, july, august]\nmachines:");
        change(MERCADO, "start: 2026-06-15", "start: 2026-06-01");

        JsonNode options = json(MERCADO);

        double condenser = hazard(2, 9, 3);
        double water = hazard(2, 8, 3);
        double random = 0.25 * 3 / 12;
        for (String plan : new String[]{"semiannual", "quarterly"}) {
            assertThat(options.path(plan).path("chanceOfNoCall").asDouble()).as(plan)
                    .isCloseTo(Math.exp(-random - condenser - water), within(1e-6));
        }
        assertThat(options.path("payPerCall").path("chanceOfNoCall").asDouble())
                .isCloseTo(Math.exp(-random - (hazard(2, 9, 6) - condenser)
                        - (hazard(2, 8, 6) - water)), within(1e-6));
    }

    /** Of the Weibull law through two counts of 20. */
    private static double hazard(double bySix, double byTwelve, double months) {
        double six = -Math.log(1 - bySix / 20);
        double twelve = -Math.log(1 - byTwelve / 20);
        return six * Math.pow(months / 6, Math.log(twelve / six) / Math.log(2));
    }

    /** Condensers that calls brush are 0.47 (the bakery) and 0.61 of a year's dirt dirty when nobody else does. */
    @ParameterizedTest
    @CsvSource({BAKERY + ", 51", MERCADO + ", 94", FERNHILL + ", 181"})
    void electricity_callsBrush_countsTheirDirt(String file, double middle) {
        JsonNode saved = asShipped(file).path("electricitySaved");

        assertThat(saved.path("middle").asDouble()).isCloseTo(middle, within(0.5));
        assertThat(saved.path("low").asDecimal()).isEqualByComparingTo("0");
    }

    private JsonNode asShipped(String file) {
        return AS_SHIPPED.computeIfAbsent(file, name -> whole(name, LookAhead.USUAL));
    }

    private JsonNode json(String file) {
        return json(file, LookAhead.USUAL);
    }

    private JsonNode json(String file, LookAhead asked) {
        return whole(file, asked).path("options");
    }

    private JsonNode whole(String file, LookAhead asked) {
        ComparisonResult compared = DemoShop.office(folder).plans().compare(FormName.file(folder.resolve(file)),
                new PaperOptions(Optional.empty(), DAY, Optional.empty(), Extras.NONE), asked).orElseThrow();
        return JsonMapper.shared().readTree(AnswerMapper.text(compared)).path("forecast");
    }

    private void change(String name, String from, String to) throws IOException {
        Path file = folder.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
    }
}
