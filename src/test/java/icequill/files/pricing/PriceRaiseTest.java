package icequill.files.pricing;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.files.pricing.PriceRaise.By;
import icequill.files.pricing.PriceRaise.Change;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.Monetary;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Prices raised by percent, worked out by hand. */
class PriceRaiseTest {

    private static final LocalDate FROM = LocalDate.of(2027, 1, 1);
    private static final String LABOR = """
            # Labor, with \uD83E\uDDCA before all else.
            kind: labor
            effective:
              from: 2026-01-01   # invented
            grades:
              - id: lead
                hourly: {standard: 98.00, after-hours: 147.00}   # 98 is what we agreed
                wage: 46.50
            """;
    private static final String MATERIALS = """
            kind: materials
            effective: {from: 2026-01-01, until: 2028-01-01}
            items:
              - {id: filter, class: filters, cost: 48.00, price: 87.25}
              - {id: brush, class: parts, cost: 4.10, markup: 80}
              - {id: clip, class: parts, price: 0.0525}
            """;

    /** 4 % of 98.00 and 147.00 make 101.92 and 152.88. */
    @Test
    void labor_toHalfADollar_commentsAndOrderKept() {
        Change labor = raised("pricing/labor.yaml", LABOR, PriceGroup.LABOR, "4", "0.50");

        assertThat(labor.target()).isEqualTo("pricing/labor-2027-01-01.yaml");
        assertThat(labor.raised()).isEqualTo(LABOR.replace("2026-01-01", "2027-01-01").replace("standard: 98.00",
                "standard: 102.00").replace("147.00", "153.00"));
        assertThat(ended(labor)).isEqualTo(
                LABOR.replace("2026-01-01   # invented", "2026-01-01   # invented\n  until: 2027-01-01"));
        assertThat(labor.prices())
                .extracting(price -> Amounts.plain(price.before()) + " " + Amounts.plain(price.after()))
                .containsExactly("98.00 102.00", "147.00 153.00");
    }

    /** 3 % of 87.25 make 89.8675; of 0.0525 0.054075, to its own four decimals. What follows its cost has no price. */
    @Test
    void materials_byClass_endOfTheFileKept() {
        Change filters = raised("pricing/materials-2026-01-01.yaml", MATERIALS, PriceGroup.FILTERS, "3", "");
        Change parts = raised("pricing/materials.yaml", MATERIALS, PriceGroup.PARTS, "3", "");

        assertThat(filters.target()).isEqualTo("pricing/materials-2027-01-01.yaml");
        assertThat(filters.raised())
                .isEqualTo(MATERIALS.replace("from: 2026-01-01", "from: 2027-01-01").replace("87.25", "89.87"));
        assertThat(ended(filters)).isEqualTo(MATERIALS.replace("until: 2028-01-01", "until: 2027-01-01"));
        assertThat(parts.raised()).contains("price: 0.0541", "price: 87.25", "markup: 80");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"52.00 | 4 | 1 | 54.00", "52.00 | 4 | 0.05 | 54.10", "78.00 | 4 | 1 | 81.00",
            "58.00 | 4 | 0.50 | 60.50", "100.00 | -2.5 | 1 | 98.00", "10.05 | 10 | 0.01 | 11.06"})
    void price_raised(String before, String percent, String step, String after) {
        String file = "kind: service-call\neffective: {from: 2026-01-01}\nzones: [{prices: {standard: " + before
                + "}}]\nbeyond: 2.40\n";

        assertThat(raised("pricing/service-call.yaml", file, PriceGroup.SERVICE_CALL, percent, step).raised())
                .contains("standard: " + after + "}", "beyond: 2.40");
    }

    /** 1 % of 98.00 make 98.98, and the nearest 10.00 would be 100.00; of 147.00 make 148.47, and 150.00. To 60 they would be less. */
    @Test
    void step_thatLowersAPrice_isAProblem() {
        assertThat(problems(LABOR, PriceGroup.LABOR, "1", "10")).isEmpty();
        assertThat(problems(LABOR, PriceGroup.LABOR, "1", "60")).singleElement().asString().contains(
                "pricing/labor.yaml: grades[0].hourly.after-hours",
                "147.00 and 1 %, to the nearest full step, would be 120.00 (a smaller step)");
        assertThat(problems(LABOR, PriceGroup.LABOR, "1", "500")).hasSize(2);
    }

    @Test
    void groupWithoutPrices_andFileThatBeginsLater_areProblems() {
        assertThat(problems(LABOR, PriceGroup.MILES, "4", "")).singleElement().asString()
                .contains("no price of miles is in force before 2027-01-01");
        assertThat(problems(LABOR.replace("2026-01-01", "2027-01-01"), PriceGroup.LABOR, "4", "")).singleElement()
                .asString().contains("no price of labor is in force before 2027-01-01");
    }

    /**
     * A raise of 4 % from 2028 on stands already: 98.00 and 102.00. 10 % from July 2027 on make 107.80 of the one and 112.20 of the other;
     * were that left at 102.00, the price would fall back.
     */
    @Test
    void raise_beforeALaterVersion_raisesThatToo() {
        List<Change> changes = raise(PriceGroup.LABOR, "10", "").of(RatesVersion.of(Map.of(
                "pricing/labor.yaml", LABOR.replace("from: 2026-01-01", "from: 2026-01-01\n  until: 2028-01-01")
                        .getBytes(UTF_8),
                "pricing/labor-2028-01-01.yaml", LABOR.replace("2026-01-01", "2028-01-01").replace(
                        "98.00", "102.00").getBytes(UTF_8))))
                .orElseThrow();

        assertThat(changes).extracting(Change::target).containsExactly("pricing/labor-2027-01-01.yaml",
                "pricing/labor-2028-01-01.yaml");
        assertThat(changes.getFirst().raised()).contains("from: 2027-01-01", "until: 2028-01-01", "107.80");
        assertThat(changes.getLast().split()).isEmpty();
        assertThat(changes.getLast().raised()).contains("from: 2028-01-01", "112.20", "161.70", "# 98 is what");
    }

    /** Filters were raised from the day on; then parts are, in the same file, and neither once more. */
    @Test
    void raise_ofAnotherGroupFromTheSameDay_goesIntoTheFileOfThatDay() {
        String ended = MATERIALS.replace("until: 2028-01-01", "until: 2027-01-01");
        String begun = MATERIALS.replace("from: 2026-01-01", "from: 2027-01-01").replace("87.25", "89.87");
        RatesVersion version = RatesVersion.of(Map.of("pricing/materials.yaml", ended.getBytes(UTF_8),
                "pricing/materials-2027-01-01.yaml", begun.getBytes(UTF_8)));

        List<Change> parts = raise(PriceGroup.PARTS, "3", "").of(version).orElseThrow();

        assertThat(parts).singleElement().satisfies(change -> {
            assertThat(change.target()).isEqualTo("pricing/materials-2027-01-01.yaml");
            assertThat(change.split()).isEmpty();
            assertThat(change.raised()).isEqualTo(begun.replace("0.0525", "0.0541"));
        });
        assertThat(raise(PriceGroup.FILTERS, "3", "").of(version).problems()).singleElement().asString().contains(
                "pricing/materials-2027-01-01.yaml", "prices of filters change on 2027-01-01 already");
    }

    @Test
    void agreed_sheetsThatHoldFromThenOn() {
        String sheet = "kind: rate-sheet\neffective: {from: 2026-01-01}\nprices: {filter: 80.00}\n";
        RatesVersion version = RatesVersion.of(Map.of("pricing/sheet.yaml", sheet.getBytes(UTF_8), "pricing/old.yaml",
                sheet.replace("01-01}", "01-01, until: 2027-01-01}").getBytes(UTF_8)));

        assertThat(raise(PriceGroup.FILTERS, "3", "").agreed(version)).containsExactly("pricing/sheet.yaml");
    }

    private static String ended(Change change) {
        return change.split().orElseThrow().ended();
    }

    private static List<String> problems(String text, PriceGroup group, String percent, String step) {
        return raise(group, percent, step).of(RatesVersion.of(Map.of("pricing/labor.yaml", text.getBytes(UTF_8))))
                .problems().stream().map(Problem::text).toList();
    }

    private static PriceRaise raise(PriceGroup group, String percent, String step) {
        return new PriceRaise(FROM, Map.of(group, new By(Percent.of(percent),
                Optional.of(step).filter(text -> !text.isEmpty()).map(BigDecimal::new))), Monetary.getCurrency("USD"));
    }

    private static Change raised(String name, String text, PriceGroup group, String percent, String step) {
        return raise(group, percent, step).of(RatesVersion.of(Map.of(name, text.getBytes(UTF_8)))).orElseThrow()
                .getFirst();
    }
}
