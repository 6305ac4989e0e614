package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import icequill.DemoShop;
import icequill.answer.ComparisonResult;
import icequill.answer.PlanEarnings;
import icequill.answer.WrittenPaper;
import icequill.document.OwnersOutlook;
import icequill.explain.Fact;
import icequill.files.answer.AnswerMapper;
import icequill.money.Amounts;
import icequill.oracle.GridStops;
import icequill.outlook.LookAhead;
import icequill.outlook.OwnersAssembly;
import icequill.outlook.SiteForecast;
import icequill.party.Language;
import icequill.plans.PlanContext;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.render.PaperPages;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import icequill.shop.PlanLoader;
import icequill.shop.ShopFolder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Comparison sheets that look ahead, for the invented shop. */
@Tag("wide")
class OutlookTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 14);
    private static final String BAKERY = "quotes/crumb-lane-plan.yaml";
    private static final String RATES = "pricing/forecast.yaml";
    private static final List<String> PLANS = List.of("crumb-lane-plan", "fernhill-plan", "plan-mercado");
    private static final String ALIKE = "{usual: 0, low: 0, high: 0}";
    private static final String AS_SHIPPED = "{usual: 30, low: 15, high: 50}";

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    /** Machines that stop without regard to each other, whose forecast takes an eighth of the time; as shipped where it matters. */
    @BeforeEach
    void shop() throws IOException {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
        sitesDiffer(ALIKE);
    }

    @Test
    void json_bakery_hasEveryOptionWithEveryKey() throws IOException {
        sitesDiffer(AS_SHIPPED);
        JsonNode json = json(BAKERY, new LookAhead(Optional.of(2), Optional.of(4)));

        JsonNode options = json.path("options");
        assertThat(options.propertyNames()).containsExactly("payPerCall", "bookedSingly", "semiannual", "quarterly",
                "every4Months");
        for (JsonNode option : options.values()) {
            assertThat(option.propertyNames()).contains("plannedPrice", "expectedCalls", "chanceOfNoCall", "charges",
                    "total", "horizon");
            for (JsonNode law : List.of(option.path("charges"), option.path("total"),
                    option.path("horizon").path("total"))) {
                assertThat(law.propertyNames()).contains("currency", "mean", "sd", "p10", "p50", "p90");
                assertThat(law.path("p10").asDecimal()).isLessThanOrEqualTo(law.path("p50").asDecimal());
                assertThat(law.path("p50").asDecimal()).isLessThanOrEqualTo(law.path("p90").asDecimal());
            }
            assertThat(option.path("horizon").path("years").asInt()).isEqualTo(2);
        }
        assertThat(options.path("payPerCall").path("plannedPrice").asDecimal()).isEqualByComparingTo("0");
        assertThat(options.path("payPerCall").path("chanceCheaperThanPayPerCall").isMissingNode()).isTrue();
        assertThat(options.path("quarterly").path("chanceCheaperThanPayPerCall").propertyNames())
                .containsExactly("1", "3", "5");
        // The same cleanings at less, with the same calls at less: an agreement is cheaper unless its calls fall out worse.
        assertThat(options.path("quarterly").path("chanceCheaperThanBookedSingly").path("1").asDouble())
                .isGreaterThan(0.5);
        assertThat(options.path("bookedSingly").path("chanceCheaperThanBookedSingly").isMissingNode()).isTrue();
        // Four cleanings at list are 1,193.66; three at a quarter of it each: 895.245.
        assertThat(options.path("every4Months").path("plannedPrice").asDecimal()).isEqualByComparingTo("895.25");
        assertThat(options.path("quarterly").path("plannedPrice").asDecimal()).isEqualByComparingTo("1075.00");
        assertThat(json.path("inputs").path("condenser").path("origin").asString()).isEqualTo("our estimate");
    }

    /**
     * One machine with one clock of 2.2 and 10 of 20 (shape about 2.5724, scale about 13.838) and 0.2 random faults, a year after its cleaning:
     * counts confirmed by simulation and by the Weibull count series. Each call is a minimum hour at 52.00 + 98.00, or, with ten percent
     * off labor, at 52.00 + 88.20; chances are of none, one, two and more.
     */
    @Test
    void json_oneClock_figuresByHand() throws IOException {
        oneClock();

        JsonNode options = json(BAKERY, LookAhead.USUAL).path("options");

        JsonNode never = options.path("payPerCall");
        assertThat(never.path("expectedCalls").asDouble()).isCloseTo(1.411268, within(5e-5));
        assertThat(never.path("chanceOfNoCall").asDouble()).isCloseTo(0.026532, within(5e-5));
        assertThat(never.path("callsByCause").path("condenser").asDouble()).isZero();
        // 150 x 1.411268, 150 x sqrt(0.450419); none in 2.7 %, more than one in 36.8 %.
        assertCharges(never.path("charges"), 211.69, 100.67, 150.0, 150.0, 300.0);
        JsonNode plan = options.path("semiannual");
        assertThat(plan.path("expectedCalls").asDouble()).isCloseTo(0.422203, within(5e-5));
        assertThat(plan.path("chanceOfNoCall").asDouble()).isCloseTo(0.648528, within(5e-5));
        // 140.20 x 0.422203, 140.20 x sqrt(0.401967); none in 64.9 %, more than one in 6.3 %.
        assertCharges(plan.path("charges"), 59.19, 88.89, 0.0, 0.0, 140.2);
        assertThat(plan.path("total").path("mean").asDecimal()).isEqualByComparingTo(plan.path("plannedPrice")
                .asDecimal().add(plan.path("catchingUp").asDecimal())
                .add(plan.path("charges").path("mean").asDecimal()));
    }

    /**
     * Every year of the semiannual plan begins just cleaned, so each has the same calls: 59.19 in the first, and 3 % more for them
     * in the second. Where money of a year later counts as much less as prices rise, two years are twice the first.
     */
    @ParameterizedTest
    @CsvSource({"'prices: 3', 120.16", "'prices: 3, money: 3', 118.39", "'money: 5', 115.57"})
    void json_laterYears_countAsTheRatesSay(String later, double mean) throws IOException {
        oneClock();
        change(RATES, "years: 3 ", "laterYears: {" + later + "}\nyears: 3 ");

        JsonNode plan = json(BAKERY, new LookAhead(Optional.of(2), Optional.empty())).path("options")
                .path("semiannual");

        assertThat(plan.path("charges").path("mean").asDouble()).isCloseTo(59.19, within(0.015));
        assertThat(plan.path("horizon").path("charges").path("mean").asDouble()).isCloseTo(mean, within(0.03));
    }

    @Test
    void sheets_laterYears_areStated() throws IOException {
        change(RATES, "years: 3 ", "laterYears: {prices: 3, money: 5}\nyears: 3 ");

        assertThat(printed(BAKERY, Language.ENGLISH))
                .contains(
                        "Prices rise 3 percent a year, and what comes a year later counts 5");
    }

    /** All ways are compared for the same: what each gives stands beside it, or that it does not. */
    @Test
    void sheet_everyWay_saysWhatTheCustomerGets() throws IOException {
        JsonNode ways = whole(compare(BAKERY, wish(Language.ENGLISH),
                new LookAhead(Optional.of(2), Optional.of(5))).orElseThrow()).path("asPrinted");

        assertThat(ways.valueStream().map(way -> way.path("whatYouGet"))
                .map(got -> got.path("visits").asInt() + " " + got.path("fullCleanings").asInt() + " "
                        + got.path("filterChanges") + " " + got.path("readings").asInt() + " "
                        + got.path("includedCalls").asInt() + " " + got.path("catchingUp").asDecimal().setScale(2)))
                .containsExactly("0 0 0 0 0 0.00", "4 4 2 4 0 153.79", "2 2 2 2 0 153.79", "4 4 2 4 0 153.79",
                        "3 3  3 0 153.79");
        assertThat(printed(BAKERY, Language.ENGLISH)).contains(
                "What you get: 4 visits in the first year, full cleanings: 4; filters on 2; readings on 4; first-time deep cleaning 153.79",
                "What you get: nothing is planned", "in cash, before tax, rounded outward");
        assertThat(printed(BAKERY, Language.SPANISH)).contains("Lo que recibe: 4 visitas en el primer año",
                "Lo que recibe: nada planeado");
    }

    /** 60.00 a day for 12 of 24 hours, 90.00, 25.00 and 15.00: 160.00 a stop, as often as calls are expected. */
    @Test
    void json_ownCosts_standBesideTheCashAndNeverInIt() throws IOException {
        change(RATES, "hoursDown: 24", "hoursDown: 12");
        JsonNode without = json(BAKERY, LookAhead.USUAL);
        Files.writeString(folder.resolve(BAKERY), """
                forecast:
                  ownCosts: {iceBought: 60.00, spoiledTrade: 90.00, emergencyPremium: 25.00, secondTrip: 15.00}
                """, StandardOpenOption.APPEND);
        JsonNode with = json(BAKERY, LookAhead.USUAL);

        assertThat(without.path("ownCosts").isMissingNode()).isTrue();
        assertThat(with.path("options")).isEqualTo(without.path("options"));
        assertThat(with.path("ownCosts").path("aStop").asDecimal()).isEqualByComparingTo("160.00");
        for (String way : List.of("payPerCall", "quarterly")) {
            JsonNode option = with.path("options").path(way);
            double own = 160 * option.path("expectedCalls").asDouble();
            JsonNode year = with.path("ownCosts").path("firstYear").path(way);
            assertThat(year.path("ownCosts").asDouble()).isCloseTo(own, within(0.006));
            assertThat(year.path("withThem").asDouble())
                    .isCloseTo(own + option.path("total").path("mean").asDouble(), within(0.012));
        }
        assertThat(printed(BAKERY, Language.ENGLISH)).contains("Your costs of stops, electricity, wear",
                "A stop of 12 h costs you 160.00 besides what we charge: 60.00 a day for bought ice, 90.00 of spoiled trade",
                "Your figures").doesNotContain("Ice not made");
        assertThat(printed(BAKERY, Language.SPANISH)).contains("Sus costos por paros, luz, desgaste");
    }

    /** Catching up is a row of its own, and what it earns is counted. */
    @Test
    void owner_catchingUp_isARowAndCounts() {
        PlanContext hand = new PlanLoader(DemoShop.read(folder)).of(FormName.file(folder.resolve(BAKERY)), DAY)
                .orElseThrow();
        ShopFolder shop = DemoShop.read(folder);
        OwnersOutlook page = new OwnersAssembly(SiteForecast
                .of(hand, shop.forecast(DAY).orElseThrow(), shop.energy(), DAY, LookAhead.USUAL).orElseThrow())
                .page(wish(Language.ENGLISH));

        assertThat(amounts(page, "mine.catch-up")).containsExactly("0.00", "153.79", "153.79", "153.79");
        List<String> caughtUp = amounts(page, "mine.margin-catch-up");
        assertThat(caughtUp.getFirst()).isEqualTo("0.00");
        assertThat(new BigDecimal(caughtUp.getLast())).isBetween(BigDecimal.ONE, new BigDecimal("153.78"));
        for (int way = 0; way < caughtUp.size(); way++) {
            assertThat(new BigDecimal(amounts(page, "mine.margin").get(way)))
                    .isEqualByComparingTo(new BigDecimal(amounts(page, "mine.margin-planned").get(way))
                            .add(new BigDecimal(amounts(page, "mine.margin-calls").get(way)))
                            .add(new BigDecimal(caughtUp.get(way))));
        }
    }

    private static List<String> amounts(OwnersOutlook page, String label) {
        return page.lines().stream().filter(line -> line.label().key().equals(label)).findFirst().orElseThrow()
                .values().stream().map(value -> Amounts.plain(((Fact.Amount) value.facts().getFirst()).amount()))
                .toList();
    }

    /** Less is saved on a machine that takes 2 kWh for 100 lb than on one of 30. */
    @Test
    void sheet_nameplate_decidesTheEnergy() throws IOException {
        assertThat(mostSaved("30")).isGreaterThan(4 * mostSaved("2")).isPositive();
        assertThat(problems("{machine: proof-room, nameplate: 0.5}")).singleElement()
                .satisfies(problem -> assertThat(problem.text()).contains("nameplate", "from 1 to 40"));
    }

    private int mostSaved(String nameplate) throws IOException {
        String text = Files.readString(folder.resolve(BAKERY));
        Files.writeString(folder.resolve(BAKERY),
                text + "forecast:\n  machines: [{machine: proof-room, nameplate: " + nameplate + "}]\n");
        Matcher range = Pattern.compile("between 0 and ([0-9,]+) less a year")
                .matcher(printed(BAKERY, Language.ENGLISH));
        Files.writeString(folder.resolve(BAKERY), text);
        assertThat(range.find()).isTrue();
        return Integer.parseInt(range.group(1).replace(",", ""));
    }

    private List<Problem> problems(String machine) throws IOException {
        String text = Files.readString(folder.resolve(BAKERY));
        Files.writeString(folder.resolve(BAKERY), text + "forecast:\n  machines: [" + machine + "]\n");
        List<Problem> problems = DemoShop.office(folder).plans()
                .compare(FormName.file(folder.resolve(BAKERY)), wish(Language.ENGLISH),
                        LookAhead.USUAL)
                .problems();
        Files.writeString(folder.resolve(BAKERY), text);
        return problems;
    }

    private void oneClock() throws IOException {
        change("sites/crumb-lane-bakery.yaml", "cooling: air", "cooling: water");
        change(BAKERY, "      lastCleaned: 2024-11-04\n", "");
        String text = Files.readString(folder.resolve(RATES));
        String calls = """
                resetTasks:
                  condenser: [clean-bin]
                  water: [clean-bin]
                calls:
                  random: [{id: a, name: {en: a, es: a}, share: 1, band: standard, minutes: 60, on: diagnosis}]
                  condenser: [{id: a, name: {en: a, es: a}, share: 1, band: standard, minutes: 52, on: diagnosis}]
                  water: [{id: a, name: {en: a, es: a}, share: 1, band: standard, minutes: 52, on: diagnosis}]
                """;
        text = text.substring(0, text.indexOf("resetTasks:")) + calls + text.substring(text.indexOf("beside:"));
        Files.writeString(folder.resolve(RATES),
                text.replace("randomFaults: {usual: 0.25", "randomFaults: {usual: 0.2")
                        .replace("usual: {by6: 2, by12: 8}", "usual: {by6: 2.2, by12: 10}")
                        .replace("yeast: {condenser: 1.2, water: 1.4}", "yeast: {condenser: 1, water: 1}"));
    }

    /** Mean and spread to the cent but for the rounding of the clock above, quantiles exactly. */
    private static void assertCharges(JsonNode law, double mean, double deviation, Double... quantiles) {
        assertThat(law.path("mean").asDouble()).isCloseTo(mean, within(0.015));
        assertThat(law.path("sd").asDouble()).isCloseTo(deviation, within(0.015));
        assertThat(List.of("p10", "p50", "p90")).extracting(key -> law.path(key).asDouble()).containsExactly(quantiles);
    }

    @Test
    void sheet_callsAreDear_saysThatThePlanPays() throws IOException {
        String text = Files.readString(folder.resolve(RATES));
        Files.writeString(folder.resolve(RATES), text.replace("minutes: 30 ", "minutes: 400 "));

        assertThat(printed(BAKERY, Language.ENGLISH)).contains("In cash the first year comes to about",
                "The plan is cheaper for").doesNotContain("Paying per call is cheaper");
    }

    @Test
    void sheet_callsAreCheap_saysThatPayingPerCallIsCheaperAndWhatMayStillDecide() throws IOException {
        sitesDiffer(AS_SHIPPED);
        assertThat(printed(BAKERY, Language.ENGLISH)).contains(
                "Your machine needs 4 full cleanings a year. As the quarterly plan they cost 1,075.00; one at a time, 1,193.66.",
                "The quarterly plan pays for itself if it saves you 5 calls",
                "You had 3 calls in the last twelve months; we would have expected about 2.6, which fits.",
                "Paying per call is cheaper for nearly all of ten sites",
                "With ice bought in, electricity and wear, by our estimate, it is about",
                "(what neglect costs; we advise against it)",
                "Proof room: last cleaned November 4, 2024. As you told us", "Our estimate",
                "the less sure it is");
    }

    /** Where no ice is used, neither electricity nor bought ice nor scale is anything to speak of; it is no fault. */
    @Test
    void sheet_noIceIsUsed_saysNothingOfIce() throws IOException {
        change(RATES, "iceUsed: {usual: 60, low: 40, high: 75}", "iceUsed: {usual: 0, low: 0, high: 75}");

        assertThat(printed(BAKERY, Language.ENGLISH)).contains("The machine's life")
                .doesNotContain("Ice not made", "less a year", "of minerals");
    }

    /** Where half of the calls clean, half of each kind is priced without the cleaning, and more calls come than where all do. */
    @Test
    void json_someCallsClean_liesBetweenAllAndNone() throws IOException {
        double all = json(BAKERY, LookAhead.USUAL).path("options").path("payPerCall").path("expectedCalls").asDouble();
        change(RATES, "afterCall: resets  ", "callsThatClean: 50  ");
        JsonNode half = json(BAKERY, LookAhead.USUAL);
        change(RATES, "callsThatClean: 50  ", "callsThatClean: 0  ");
        double none = json(BAKERY, LookAhead.USUAL).path("options").path("payPerCall").path("expectedCalls").asDouble();

        assertThat(half.path("options").path("payPerCall").path("expectedCalls").asDouble()).isBetween(all, none);
        assertThat(half.path("inputs").path("calls").path("payPerCall").valueStream()
                .filter(kind -> kind.path("name").asString().equals("stopped by heat, in the daytime")).toList())
                .satisfiesExactly(
                        cleaned -> {
                            assertThat(cleaned.path("share").asDouble()).isEqualTo(0.35);
                            assertThat(cleaned.path("cleans").asBoolean()).isTrue();
                        },
                        restarted -> {
                            assertThat(restarted.path("share").asDouble()).isEqualTo(0.35);
                            assertThat(restarted.path("cleans").asBoolean()).isFalse();
                        });
    }

    /** Whether a call cleans decides which way is cheaper: the owner is told, at the demo's bakery from -418.75 to 1,288.60. */
    @Test
    void owner_whetherCallsClean_isWhatMovesTheAnswerMost() throws IOException {
        WrittenPaper paper = DemoShop.office(folder).plans()
                .ownersOutlook(FormName.file(folder.resolve(BAKERY)), wish(Language.ENGLISH), LookAhead.USUAL)
                .orElseThrow();

        String page = PrintedQuote.of(paper.files().getFirst()).flowing();

        assertThat(page).contains("No call cleans the side that stopped, or each does",
                "Cleanings take away 70% of the",
                "No calls, or twice as many, in: Sundays and holidays");
        assertThat(page.indexOf("No call cleans")).isLessThan(page.indexOf("Calls a fifth cheaper"));
    }

    /** What machines of a site share moves the far end of charges, not what is paid beforehand; sheet, page and data say so. */
    @Test
    void sitesDiffer_spreadsChargesAndIsSaid() throws IOException {
        String hotel = "quotes/fernhill-plan.yaml";
        JsonNode alike = json(hotel, LookAhead.USUAL);
        sitesDiffer("{usual: 60, low: 30, high: 75}");
        ComparisonResult compared = compare(hotel, wish(Language.ENGLISH), LookAhead.USUAL).orElseThrow();
        JsonNode differ = json(compared);

        assertThat(alike.path("inputs").path("sitesDiffer").path("usual").asInt()).isZero();
        assertThat(differ.path("inputs").path("sitesDiffer").path("usual").asInt()).isEqualTo(60);
        JsonNode before = alike.path("options").path("payPerCall");
        JsonNode after = differ.path("options").path("payPerCall");
        assertThat(after.path("callsByCause").path("random").asDouble())
                .isCloseTo(before.path("callsByCause").path("random").asDouble(), within(1e-6));
        assertThat(after.path("expectedCalls").asDouble()).isBetween(
                0.93 * before.path("expectedCalls").asDouble(), before.path("expectedCalls").asDouble());
        assertThat(after.path("charges").path("sd").asDouble())
                .isGreaterThan(1.2 * before.path("charges").path("sd").asDouble());
        assertThat(after.path("charges").path("p90").asDouble())
                .isGreaterThan(before.path("charges").path("p90").asDouble());
        assertThat(after.path("charges").path("p10").asDouble())
                .isLessThan(before.path("charges").path("p10").asDouble());
        assertThat(printed(compared)).contains("Each site stops more or less often");
        assertThat(printed(hotel, Language.SPANISH)).contains("Cada local falla más o menos de lo supuesto");
    }

    @Test
    void sitesDiffer_tooMuch_isAProblem() throws IOException {
        sitesDiffer("{usual: 60, low: 30, high: 80}");

        assertThat(compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).problems())
                .anyMatch(problem -> problem.text().contains("sitesDiffer") && problem.text().contains("75"));
    }

    /**
     * A season of the water's dirt: months count 0.4, 1, 1.8 and 0.8 times by quarter. With no cleaning a year of whole years of dirt brings
     * as many calls as before; with cleanings the grid counts them in months as they count, laid out by hand from the start on June 1.
     */
    @Test
    void seasons_countMonthsOfDirtAsTheyAreSet() throws IOException {
        change(BAKERY, "lastCleaned: 2024-11-04", "lastCleaned: 2024-05-14");
        JsonNode even = json(BAKERY, LookAhead.USUAL);
        change(RATES, "# seasons:", "seasons: {water: [0.4, 1, 1.8, 0.8]}");
        JsonNode summer = json(BAKERY, LookAhead.USUAL);

        assertThat(even.path("inputs").path("seasons").path("water").isMissingNode()).isTrue();
        assertThat(summer.path("inputs").path("seasons").path("water").toString()).isEqualTo("[0.4,1,1.8,0.8]");
        double[] ahead = {1, 1.8, 1.8, 1.8, 0.8, 0.8, 0.8, 0.4, 0.4, 0.4, 1, 1};
        double age = summer.path("inputs").path("machines").get(0).path("monthsOfDirtInWater").asDouble();
        assertThat(age).isEqualTo(24, within(1e-6));
        for (String way : List.of("payPerCall", "bookedSingly", "quarterly")) {
            JsonNode option = summer.path("options").path(way);
            List<Double> cleanings = option.path("cleanings").valueStream().map(JsonNode::asDouble)
                    .map(month -> counted(ahead, month)).toList();
            double shape = Math.log(Math.log(1 - 8 / 20.0) / Math.log(1 - 2 / 20.0)) / Math.log(2);
            double scale = 12 / Math.pow(-Math.log(1 - 8 / 20.0), 1 / shape) / 1.4;
            assertThat(option.path("callsByCause").path("water").asDouble()).as(way).isEqualTo(
                    GridStops.mean(new GridStops(shape, scale, cleanings, 1).chances(age, 12, 720)), within(2e-5));
            assertThat(option.path("callsByCause").path("condenser")).isEqualTo(
                    even.path("options").path(way).path("callsByCause").path("condenser"));
        }
        assertThat(summer.path("options").path("quarterly").path("expectedCalls").asDouble())
                .isNotCloseTo(even.path("options").path("quarterly").path("expectedCalls").asDouble(), within(0.005));
    }

    private static double counted(double[] ahead, double month) {
        int whole = (int) Math.min(11, month);
        double sum = (month - whole) * ahead[whole];
        for (int i = 0; i < whole; i++) {
            sum += ahead[i];
        }
        return sum;
    }

    /** Nothing is said of seasons to a customer where none is known; the owner reads that none is set. */
    @Test
    void seasons_areSaidWhereTheyAreKnown() throws IOException {
        assertThat(printed(BAKERY, Language.ENGLISH)).doesNotContain("as on average from January");
        assertThat(ownersPage(BAKERY, Language.ENGLISH)).contains("No month is taken to bring more stops than another");
        assertThat(ownersPage(BAKERY, Language.SPANISH)).contains("No se supone que un mes traiga más paros");
        change(RATES, "# seasons:", "seasons: {random: [0.7, 1, 1.5, 0.8], condenser: [0.5, 1, 1.75, 0.75]}");

        String sheet = printed(BAKERY, Language.ENGLISH);
        assertThat(sheet).contains(
                "0.7, 1, 1.5 and 0.8 times", "0.5, 1, 1.75 and 0.75 times")
                .doesNotContain("Scale and slime come");
        assertThat(printed(BAKERY, Language.SPANISH)).contains("0.7; 1; 1.5 y 0.8 veces", "0.5; 1; 1.75 y 0.75 veces");
        assertThat(ownersPage(BAKERY, Language.ENGLISH)).contains("a year keeps its random faults")
                .doesNotContain("No month is taken");
        double usual = json(BAKERY, LookAhead.USUAL).path("options").path("payPerCall").path("callsByCause")
                .path("random").asDouble();
        assertThat(usual).isEqualTo(0.25, within(1e-9));
    }

    @Test
    void rates_bothWordsForWhatCallsClean_areAProblem() throws IOException {
        change(RATES, "afterCall: resets  ", "callsThatClean: 50\nafterCall: resets  ");

        assertThat(compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).problems())
                .anyMatch(problem -> problem.text().contains("afterCall stands here too"));
    }

    /** Neither a brushing nor electricity is promised for a machine that has no condenser to brush, in no language and on no page. */
    @Test
    void sheets_machinesCooledByWater_sayNothingOfCondensers() throws IOException {
        String hotel = "quotes/fernhill-plan.yaml";
        change(hotel, "machines: [lobby-bar, floor-3, floor-6, pool-bar]", "machines: [pool-bar]");

        assertThat(printed(hotel, Language.ENGLISH).toLowerCase(Locale.ROOT))
                .doesNotContain("condenser", "electricity", "brush");
        assertThat(printed(hotel, Language.SPANISH).toLowerCase(Locale.ROOT))
                .doesNotContain("condensador", "electricidad", "cepill");
        assertThat(ownersPage(hotel, Language.ENGLISH)).doesNotContain("Dirty condensers");
        JsonNode json = json(hotel, LookAhead.USUAL);
        assertThat(json.path("options").path("payPerCall").path("callsByCause").path("condenser").asDouble()).isZero();
        assertThat(json.path("electricitySaved").isMissingNode()).isTrue();
        json.path("options")
                .forEach(option -> assertThat(option.path("monthsBetweenBrushings").isMissingNode()).isTrue());
    }

    /**
     * Dirt of decades stops a machine within days, 1 / rate of the clock, and the call's cleaning begins anew: one stop, and as many
     * as a clean machine has in the rest of the year, by the grid.
     */
    @ParameterizedTest
    @ValueSource(ints = {1990, 1977})
    void json_lastCleanedDecadesAgo_stopsAtOnceAndBeginsAnew(int year) throws IOException {
        change(BAKERY, "lastCleaned: 2024-11-04", "lastCleaned: " + year + "-11-04");

        JsonNode json = json(BAKERY, LookAhead.USUAL);

        double age = json.path("inputs").path("machines").get(0).path("monthsSinceCleaned").asDouble();
        JsonNode calls = json.path("options").path("payPerCall").path("callsByCause");
        assertThat(age).isGreaterThan(400);
        assertThat(calls.path("water").asDouble()).isCloseTo(1 + afterTheFirst(8, 1.4, age), within(5e-4));
        assertThat(calls.path("condenser").asDouble()).isCloseTo(1 + afterTheFirst(9, 1.2, age), within(5e-4));
    }

    /** Stops but the first in a year, of a clock that runs so many times as fast as one by which so many of 20 stop by month 12. */
    private static double afterTheFirst(int by12, double faster, double age) {
        double shape = Math.log(Math.log(1 - by12 / 20.0) / Math.log(1 - 2 / 20.0)) / Math.log(2);
        double scale = 12 / Math.pow(-Math.log(1 - by12 / 20.0), 1 / shape) / faster;
        double first = scale / shape * Math.pow(age / scale, 1 - shape);
        return GridStops.mean(new GridStops(shape, scale, List.of(), 1).chances(0, 12 - first, 720));
    }

    /** Where calls only restart, this dirt would stop a machine some hundred times in five years, but thousands of times in ten. */
    @Test
    void stopsWithoutEnd_areThoseOfTheHorizonAsked() throws IOException {
        likeAnySite();
        for (String guess : List.of("usual: {by6: 2, by12: 8}", "low: {by6: 1, by12: 4}", "high: {by6: 3, by12: 12}")) {
            change(RATES, guess, guess.substring(0, guess.indexOf(':')) + ": {by6: 0.36, by12: 5}");
        }

        assertThat(compare(BAKERY, wish(Language.ENGLISH), new LookAhead(Optional.of(5), Optional.empty())).problems())
                .isEmpty();
        assertThat(compare(BAKERY, wish(Language.ENGLISH), new LookAhead(Optional.of(10), Optional.empty())).problems())
                .isNotEmpty().allMatch(problem -> problem.text().contains("a water side")
                        && problem.text().contains("hundreds of times in 120.0 months"));
    }

    /** Sums of many calls are added up in steps; the page says how wide the widest is, and nothing where they are added up by the cent. */
    @Test
    void owner_stepsOfTheSums_areStated() throws IOException {
        String hotel = "quotes/fernhill-plan.yaml";
        BigDecimal widest = json(hotel, LookAhead.USUAL).path("options").values().stream()
                .map(option -> option.path("total").path("latticeStep").asDecimal()).max(BigDecimal::compareTo)
                .orElseThrow();

        assertThat(widest).isGreaterThan(new BigDecimal("0.01"));
        assertThat(ownersPage(hotel, Language.ENGLISH))
                .contains("Amounts were added up in steps of up to " + widest.toPlainString());
        assertThat(json(BAKERY, LookAhead.USUAL).path("options").values())
                .allMatch(option -> option.path("total").path("latticeStep").asDecimal()
                        .compareTo(new BigDecimal("0.01")) == 0);
        assertThat(ownersPage(BAKERY, Language.ENGLISH)).doesNotContain("in steps of");
    }

    /** Machines that run three months a year have their best interval in months of running, and the page says so. */
    @Test
    void owner_seasonalSite_saysThatItsIntervalsAreMonthsOfRunning() throws IOException {
        String said = "run 3 months a year";
        assertThat(ownersPage("quotes/plan-mercado.yaml", Language.ENGLISH)).doesNotContain(said);
        change("sites/mercado-del-mar.yaml", "machines:", "season: [june, july, august]\nmachines:");

        assertThat(ownersPage("quotes/plan-mercado.yaml", Language.ENGLISH)).contains(said,
                "a year is twelve of them");
        assertThat(ownersPage("quotes/plan-mercado.yaml", Language.SPANISH)).contains("funcionan 3 meses al año");
    }

    /** How exact the spread is where calls are included is said where some are, and only there. */
    @Test
    void owner_includedCalls_saysHowExactTheSpreadIs() throws IOException {
        assertThat(ownersPage(BAKERY, Language.ENGLISH)).doesNotContain("Included are the first calls of a year");
        Path tiers = folder.resolve("pricing/tiers.yaml");
        String text = Files.readString(tiers);
        int at = text.indexOf("    discount:", text.indexOf("- id: quarterly"));
        Files.writeString(tiers, text.substring(0, at) + "    includedCalls: {number: 2, loading: 15}\n"
                + text.substring(at));

        assertThat(ownersPage(BAKERY, Language.ENGLISH)).contains("Included are the first calls of a year");
        assertThat(ownersPage(BAKERY, Language.SPANISH)).contains("Incluidos están los primeros servicios");
    }

    private String ownersPage(String file, Language language) throws IOException {
        return PrintedQuote
                .of(DemoShop.office(folder).plans().ownersOutlook(FormName.file(folder.resolve(file)), wish(language),
                        LookAhead.USUAL).orElseThrow().files().getFirst())
                .flowing();
    }

    @Test
    void sheet_nothingIsKnownOfTheMachine_saysWhatWasTaken() throws IOException {
        assertThat(printed("quotes/plan-mercado.yaml", Language.ENGLISH))
                .contains("Cuarto frío detrás del mostrador: nobody knows when it was cleaned",
                        "we took 12 months. Our estimate");
    }

    /**
     * Half a year after a cleaning that takes away four fifths of the dirt's age, and a brushing that takes away half. Where calls only
     * restart, last year's calls are H(19) - H(12) + H(left + 5) - H(left) on each side, and a fourth of a fault.
     */
    @Test
    void workThatRestoresPart_leavesDirtLastYearAndNow() throws IOException {
        likeAnySite();
        change(BAKERY, "lastCleaned: 2024-11-04", "lastCleaned: 2025-12-14");
        change(RATES, "restores: {cleaning: 100, brushing: 100}", "restores: {cleaning: 80, brushing: 50}");

        JsonNode json = json(BAKERY, LookAhead.USUAL);

        JsonNode machine = json.path("inputs").path("machines").get(0);
        // From 14 May to 14 December 2025, and from there to 14 May 2026, in months of 30.4375 days.
        double before = 12 + 214 / 30.4375;
        double since = 151 / 30.4375;
        assertThat(machine.path("monthsSinceCleaned").asDouble()).isCloseTo(since, within(1e-6));
        assertThat(machine.path("monthsOfDirtInWater").asDouble()).isCloseTo(0.2 * before + since, within(1e-6));
        assertThat(machine.path("monthsOfDirtOnCondenser").asDouble()).isCloseTo(0.5 * before + since, within(1e-6));
        assertThat(json.path("doubt").path("expectedLastYear").asDouble())
                .isCloseTo(hazard(8, 12, 7) + hazard(8, 0.2 * 19, 5) + hazard(9, 12, 7) + hazard(9, 0.5 * 19, 5) + 0.25,
                        within(1e-6));
    }

    /** Four months old: no dirtier than that, and not there in the eight months before. */
    @Test
    void newMachine_isNoDirtierThanItsAge() throws IOException {
        likeAnySite();
        change(BAKERY, "      lastCleaned: 2024-11-04\n", "");
        change("sites/crumb-lane-bakery.yaml", "installed: 2023-03-02", "installed: 2026-01-14");

        JsonNode json = json(BAKERY, LookAhead.USUAL);

        JsonNode machine = json.path("inputs").path("machines").get(0);
        assertThat(machine.path("monthsOfDirtInWater").asDouble()).isCloseTo(120 / 30.4375, within(1e-6));
        assertThat(machine.path("monthsSinceBrushed").asDouble()).isCloseTo(120 / 30.4375, within(1e-6));
        assertThat(json.path("doubt").path("expectedLastYear").asDouble())
                .isCloseTo(hazard(8, 0, 4) + hazard(9, 0, 4) + 0.25 / 3, within(1e-6));
        assertThat(printed(BAKERY, Language.ENGLISH)).contains("Machines newer than that count from the day");
        assertThat(printed(BAKERY, Language.SPANISH)).contains("Las máquinas más nuevas cuentan desde el día");
    }

    /** No yeast in the air, and calls that only restart a machine, so that stops can be added up by hand. */
    private void likeAnySite() throws IOException {
        change(RATES, "yeast: {condenser: 1.2, water: 1.4}", "yeast: {condenser: 1, water: 1}");
        change(RATES, "afterCall: resets", "afterCall: restarts");
    }

    /** Stops in some months from an age on, of a clock by which 2 of 20 stop by month 6, and so many by month 12. */
    private static double hazard(int by12, double age, double months) {
        double shape = Math.log(Math.log(1 - by12 / 20.0) / Math.log(1 - 2 / 20.0)) / Math.log(2);
        return -Math.log(1 - by12 / 20.0)
                * (Math.pow((age + months) / 12, shape) - Math.pow(age / 12, shape));
    }

    @Test
    void sheet_figuresFromVisits_saySo() throws IOException {
        change(RATES, "water:                            # scale, slime, failed harvests\n",
                "water:\n  visits: 40\n");
        Files.writeString(folder.resolve(BAKERY), "forecast:\n  visits: 5\n  assume: {electricity: 0.21}\n",
                StandardOpenOption.APPEND);

        assertThat(printed(BAKERY, Language.ENGLISH)).contains("8 by month 12. From 40 visits",
                "From 5 visits", "A kWh costs 0.21. As you told us");
    }

    @ParameterizedTest
    @CsvSource({"crumb-lane-plan", "fernhill-plan", "plan-mercado"})
    void customersPaper_holdsNothingOfTheOwner(String name) throws IOException {
        String file = "quotes/" + name + ".yaml";
        WrittenPaper owners = DemoShop.office(folder).plans()
                .ownersOutlook(FormName.file(folder.resolve(file)), wish(Language.ENGLISH),
                        LookAhead.USUAL)
                .orElseThrow();
        PlanEarnings earnings = DemoShop.office(folder).plans()
                .earnings(FormName.file(folder.resolve(file)), wish(Language.ENGLISH))
                .orElseThrow();
        List<String> secrets = earnings.rows().stream().filter(row -> row.get(1).equals("a year"))
                .flatMap(row -> List.of(row.get(5), row.get(6)).stream()).toList();
        String page = PrintedQuote.of(owners.files().getFirst()).flowing();
        assertThat(page).contains("Not for the customer", "P90");
        assertThat(page.replace(",", "")).contains(secrets.get(1));

        ComparisonResult compared = compare(file, wish(Language.ENGLISH), LookAhead.USUAL).orElseThrow();
        String all = AnswerMapper.text(compared)
                + Files.readString(compared.paper().files().get(1)).replaceAll("(?s)<style.*</style>", "")
                + attachments(compared.paper().files().getFirst());

        assertThat(all.replace(",", "")).contains("payPerCall").doesNotContain(secrets);
        assertThat(all.toLowerCase(Locale.ROOT)).doesNotContain("margin", "meancost", "weibull");
        assertThat(PrintedQuote.of(compared.paper().files().getFirst()).flowing()).doesNotContain("P10", "P90",
                "shape");
    }

    private static String attachments(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            Map<String, ?> files = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames();
            return files.values().stream()
                    .map(file -> new String(bytes((PDComplexFileSpecification) file),
                            StandardCharsets.UTF_8))
                    .collect(Collectors.joining());
        }
    }

    private static byte[] bytes(PDComplexFileSpecification file) {
        try {
            return file.getEmbeddedFile().toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Made of one forecast, the customer's sheet and the owner's page are those that are made by themselves. */
    @Test
    void bothPages_areThoseOfEachAlone() throws IOException {
        FormName request = FormName.file(folder.resolve(BAKERY));
        List<byte[]> alone = List.of(
                bytes(compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).orElseThrow().paper()),
                bytes(DemoShop.office(folder).plans().ownersOutlook(request, wish(Language.ENGLISH), LookAhead.USUAL)
                        .orElseThrow()));

        List<WrittenPaper> both = DemoShop.office(folder).plans()
                .bothPages(request, wish(Language.ENGLISH), LookAhead.USUAL).orElseThrow();

        assertThat(both).hasSize(2);
        for (int page = 0; page < both.size(); page++) {
            assertThat(bytes(both.get(page))).isEqualTo(alone.get(page));
        }
    }

    private static byte[] bytes(WrittenPaper paper) throws IOException {
        return Files.readAllBytes(paper.files().getFirst());
    }

    /** Front and back, as it comes with the program: the longest, in the longer language on the shorter paper. */
    @Test
    void sheets_ofTheDemo_takeASheetEach() throws IOException {
        assertASheetEach("letter", Language.SPANISH, List.of("fernhill-plan"));
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"letter, es", "letter, en", "a4, es", "a4, en"})
    void allSheets_ofTheDemo_takeASheetEach(String size, Language language) throws IOException {
        assertASheetEach(size, language, PLANS);
    }

    private void assertASheetEach(String size, Language language, List<String> plans) throws IOException {
        sitesDiffer(AS_SHIPPED);
        Path shop = folder.resolve("shop.yaml");
        Files.writeString(shop, Files.readString(shop).replaceFirst("paper: (letter|a4)", "paper: " + size));
        for (String name : plans) {
            assertThat(pages(compare("quotes/" + name + ".yaml", wish(language), LookAhead.USUAL).orElseThrow()
                    .paper())).as(name).isEqualTo(2);
        }
        for (String name : List.of("crumb-lane-bakery", "hotel-fernhill")) {
            Path file = folder.resolve("brushing/" + name + ".yaml");
            assertThat(
                    pages(DemoShop.office(folder).brushing(FormName.file(file), wish(language)).orElseThrow().paper()))
                    .as(name)
                    .isEqualTo(2);
            assertThat(pages(
                    DemoShop.office(folder).brushingPair(FormName.file(file), wish(language)).orElseThrow().paper()))
                    .as(name)
                    .isEqualTo(4);
        }
    }

    private static int pages(WrittenPaper paper) throws IOException {
        try (PDDocument document = Loader.loadPDF(paper.files().getFirst().toFile())) {
            return document.getNumberOfPages();
        }
    }

    @ParameterizedTest(name = "{1} -> {2}")
    @CsvSource(delimiter = '|', value = {
            "usual: {by6: 2, by12: 9}  | usual: {by6: 5, by12: 8}  | NOT_ALLOWED | at least 8.75",
            "low: {by6: 1, by12: 5}  | low: {by6: 3, by12: 6}  | WRONG_ORDER | low 3, usual 2",
            "by12: 13} | by12: 25} | OUT_OF_RANGE | 25",
            "share: 0.6 | share: 0.5 | NOT_ALLOWED | the shares add up to 0.9",
            "share: 0.6 | share: 0 | NOT_ALLOWED | share",
            "band: standard | band: nights | UNKNOWN_NAME | there is no labor band \"nights\"",
            "material: float-switch | material: float-swich | UNKNOWN_NAME | did you mean \"float-switch\"",
            "condenser: [brush-condenser] | condenser: [brush-condensers] | UNKNOWN_NAME | did you mean \"brush-condenser\"",
            "bag: {price: 4.00 | bag: {price: -4.00 | OUT_OF_RANGE | -4",
            "newMachine: 6000 | newMachine: 0 | OUT_OF_RANGE | 0",
            "neglected: 8 | neglected: 12 | WRONG_ORDER | a neglected machine lasts 12 years",
            "neglected: 8 | neglected: 80 | OUT_OF_RANGE | 80",
            "# seasons: | seasons: {water: [1, 1, 1, 1.1]} | NOT_ALLOWED | add up to 4",
            "# seasons: | seasons: {water: [1, 1, 2]} | NOT_ALLOWED | four factors above 0",
            "# seasons: | seasons: {water: [0, 1, 2, 1]} | OUT_OF_RANGE | 0.05",
            "usual: 0.25, low: 0.1 | usual: 0.25, low: 0.3 | WRONG_ORDER | low 0.3"})
    void rates_wrong_sayWhatAndWhere(String from, String to, Code code, String message) throws IOException {
        change(RATES, from, to);

        List<Problem> problems = compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).problems();

        assertThat(problems).extracting(Problem::code).contains(code);
        assertThat(problems).anyMatch(problem -> problem.text().contains(message)
                && problem.place().file().equals(RATES) && problem.place().line() > 0);
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void rates_wrongInManyPlaces_areReportedAtOnce() throws IOException {
        change(RATES, "by12: 9}", "by12: 3}");
        change(RATES, "share: 0.75", "share: 0.5");
        change(RATES, "neglected: 8", "neglected: 11");

        assertThat(compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).problems()).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "forecast: {machines: [{machine: proof-rom}]} | there is no machine \"proof-rom\"",
            "forecast: {machines: [{machine: proof-room, lastCleaned: 2026-12-01}]} | after 2026-05-14",
            "forecast: {ownCosts: {iceBought: -1}} | from 0 to 1000000",
            "forecast: {ownCosts: {spoiledTrade: 90.005}} | finer than USD is paid",
            "forecast: {ownCosts: {secondTrips: 15}} | did you mean \"secondTrip\"?",
            "forecast: {ownCosts: {}} | ownCosts",
            "forecast: {assume: {water: {usual: {by6: 9, by12: 10}, low: {by6: 1, by12: 2}, high: {by6: 9, by12: 19}}}} | dirt would get safer"})
    void request_wrong_saysWhat(String line, String message) throws IOException {
        Files.writeString(folder.resolve(BAKERY), line + "\n", StandardOpenOption.APPEND);

        assertThat(compare(BAKERY, wish(Language.ENGLISH), LookAhead.USUAL).problems())
                .anyMatch(problem -> problem.text().contains(message) && problem.place().file().equals(BAKERY));
    }

    @Test
    void lookAhead_outOfBounds_isAProblem() {
        LookAhead wild = new LookAhead(Optional.of(0), Optional.of(61));

        assertThat(compare(BAKERY, wish(Language.ENGLISH), wild).problems()).extracting(Problem::message)
                .containsExactly("--years 0", "--interval 61");
    }

    private JsonNode json(String file, LookAhead asked) {
        return json(compare(file, wish(Language.ENGLISH), asked).orElseThrow());
    }

    private static JsonNode json(ComparisonResult compared) {
        return whole(compared).path("forecast");
    }

    private static JsonNode whole(ComparisonResult compared) {
        return JsonMapper.shared().readTree(AnswerMapper.text(compared));
    }

    private String printed(String file, Language language) throws IOException {
        return printed(compare(file, wish(language), LookAhead.USUAL).orElseThrow());
    }

    private static String printed(ComparisonResult compared) throws IOException {
        return PaperPages.flowing(compared.paper().files().getFirst());
    }

    private Validated<ComparisonResult> compare(String file, PaperOptions wish, LookAhead asked) {
        return DemoShop.office(folder).plans().compare(FormName.file(folder.resolve(file)), wish, asked);
    }

    private static PaperOptions wish(Language language) {
        return new PaperOptions(Optional.empty(), DAY, Optional.of(language), new Extras(true, false, false));
    }

    private void sitesDiffer(String guess) throws IOException {
        String text = Files.readString(folder.resolve(RATES));
        Files.writeString(folder.resolve(RATES),
                text.replaceFirst("sitesDiffer: [{][^}]*[}]", "sitesDiffer: " + guess));
    }

    private void change(String name, String from, String to) throws IOException {
        Path file = folder.resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from),
                Matcher.quoteReplacement(to)));
    }
}
