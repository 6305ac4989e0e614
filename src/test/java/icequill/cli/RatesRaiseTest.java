package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * The invented shop raises its labor and its service call by 4 %, to the nearest 0.50 and 1.00. The late call of May, 52.00 + 65.33 +
 * 159.25 = 276.58, would come to 54.00 + 68.00 + 165.75 = 287.75.
 */
class RatesRaiseTest {

    private static final String[] RAISE = {"rates", "raise", "labor=4:0.50", "service-call=4:1", "--from",
            "2027-01-01"};

    @TempDir
    private Path temporary;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void make() throws IOException {
        shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
    }

    @Test
    void raise_shownThenWritten_newPricesFromTheDayOn() throws IOException {
        Run asked = shop.run(RAISE);

        assertThat(asked.status()).isEqualTo(3);
        assertThat(asked.out()).doesNotContain(" is past:").contains(
                "pricing/labor.yaml ends on 2027-01-01; from then on pricing/labor-2027-01-01.yaml:",
                "grades[0].hourly.standard: 98.00 -> 102.00", "grades[0].hourly.after-hours: 147.00 -> 153.00",
                "zones[0].prices.standard: 52.00 -> 54.00", "Nothing is written yet.");
        assertThat(shop.folder().resolve("pricing/labor-2027-01-01.yaml")).doesNotExist();

        JsonNode raised = shop.json(more("--yes"));
        assertThat(raised.path("written").asBoolean()).isTrue();
        assertThat(shop.run("check").status()).as(shop.run("check").err()).isZero();
        assertThat(Files.readString(shop.folder().resolve("pricing/labor-2027-01-01.yaml"))).contains(
                "hourly: {standard: 102.00, after-hours: 153.00, sundays-and-holidays: 204.00}   # invented for the demo",
                "wage: 46.50");
        assertThat(Files.readString(shop.folder().resolve("pricing/labor.yaml")))
                .contains("effective: {from: 2026-01-01, until: 2027-01-01}     # invented for the demo", "98.00");
        assertThat(shop.run("price", "visits/late-call.yaml").out()).contains("276.58");
        assertThat(shop.problems(more("--yes")).toString())
                .contains("prices of labor change on 2027-01-01 already",
                        "prices of service-call change on 2027-01-01 already");

        // From July 2026 on 10 % more: 98.00 make 107.80, and the 102.00 of 2027 make 112.20.
        assertThat(shop.run("rates", "raise", "labor=10", "--from", "2026-07-01", "--yes").out()).contains(
                "pricing/labor.yaml ends on 2026-07-01", "98.00 -> 107.80",
                "pricing/labor-2027-01-01.yaml begins on that day or later, and is raised as it stands:",
                "102.00 -> 112.20");
        assertThat(shop.run("check").status()).as(shop.run("check").err()).isZero();
        assertThat(shop.run("rates", "raise", "filters=3", "--from", "2026-03-01").out())
                .contains("2026-03-01 is past: visits since then that are not billed yet");
    }

    @Test
    void raise_groupTwice_isAProblem() {
        assertThat(shop.problems("rates", "raise", "labor=4", "labor=40", "--from", "2027-01-01").toString())
                .contains("labor is given twice, as 4 and as 40 (each once)");
        assertThat(shop.run("rates", "raise", "labor", "--from", "2027-01-01").err())
                .contains("'labor' is not a name and a value with = between them");
    }

    /** A step finer than money is paid would stop all pricing on that day: nothing is written. */
    @Test
    void raise_toPricesThatCannotBeRead_isToldAndWritesNothing() throws IOException {
        Run run = shop.run("rates", "raise", "labor=3.33:0.005", "--from", "2027-01-01", "--yes");

        assertThat(run.status()).isEqualTo(3);
        assertThat(run.err()).contains("pricing/labor-2027-01-01.yaml:", "found 151.895", "finer than USD is paid");
        assertThat(shop.folder().resolve("pricing/labor-2027-01-01.yaml")).doesNotExist();
        assertThat(Files.readString(shop.folder().resolve("pricing/labor.yaml")))
                .contains("effective: {from: 2026-01-01}");
    }

    @Test
    void try_ratesNotInForce_differenceByCustomerAndClass() throws IOException {
        shop.json(more("--yes"));
        shop.issue("late-call", "2026-05-20");

        JsonNode tried = shop.json("rates", "try", "--on", "2027-01-01", "--from", "2026-05-13", "--until",
                "2026-05-13");

        assertThat(tried.path("visits").asInt()).isEqualTo(1);
        assertThat(tried.path("customers").get(0).path("now").asString()).isEqualTo("276.58");
        assertThat(tried.path("customers").get(0).path("then").asString()).isEqualTo("287.75");
        assertThat(tried.path("customers").get(0).path("difference").asString()).isEqualTo("11.17");
        assertThat(tried.path("classes").get(0).path("name").asString()).isEqualTo("repair");
        assertThat(tried.path("classes").get(0).path("difference").asString()).isEqualTo("9.17");
        assertThat(tried.path("classes").get(1).path("difference").asString()).isEqualTo("2.00");
        assertThat(shop.run("rates", "try", "--on", "2027-01-01").out()).contains("visits, before tax", "difference",
                "all");
    }

    /** The version that was in force before is tried by its name: nothing is different. */
    @Test
    void try_anEarlierVersion_ofTheSamePrices() {
        shop.issue("late-call", "2026-05-20");
        String version = shop.json("rates", "list").path("versions").get(0).path("version").asString();

        JsonNode tried = shop.json("rates", "try", version.substring(0, 6), "--on", "2026-05-13", "--month", "2026-05");

        assertThat(tried.path("total").path("difference").asString()).isEqualTo("0.00");
        assertThat(shop.problems("rates", "try", "abcdef", "--on", "2026-05-13").toString())
                .contains("version of the rates");
        assertThat(shop.problems("rates", "try", "--on", "2026-05-13", "--month", "2025-01").toString())
                .contains("no visit was done on these days");
        assertThat(shop.problems("rates", "try", "--on", "2019-05-13", "--month", "2026-05").toString())
                .contains("rates cover 2019-05-13");
    }

    @Test
    void raise_wrongWishes_areAllReported() {
        assertThat(shop.problems("rates", "raise", "labour=4", "parts=0", "filters=3:0", "fees=4", "--from",
                "2027-01-01").toString()).contains("there is no group of prices \"labour\" (did you mean \"labor\"?",
                        "parts=0 is no percentage", "filters=3:0 is no percentage");
        assertThat(shop.problems("rates", "raise", "fees=4", "--from", "2027-01-01").toString())
                .contains("no price of fees is in force before 2027-01-01");
    }

    private static String[] more(String flag) {
        String[] line = Arrays.copyOf(RAISE, RAISE.length + 1);
        line[RAISE.length] = flag;
        return line;
    }
}
