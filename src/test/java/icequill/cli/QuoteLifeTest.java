package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What becomes of quotes: accepted, declined, lapsed; and the agreement that one becomes. */
@Tag("wide")
class QuoteLifeTest {

    private static final List<String> BAKER = List.of("--by", "J. Baker", "--title", "owner", "--way", "signed");

    private static final Clock JUNE = Clock.fixed(Instant.parse("2027-06-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private Path folder;

    /** By hand: the quarterly plan of the bakery is quoted at 1,075.00 a year, which is 4 x 268.75; at 8.875 % each has 23.85 of tax. */
    @ParameterizedTest
    @EnumSource
    void acceptedPlan_isBilledAsItWasQuoted_withNothingTypedAgain(Database database) throws IOException {
        BookShop shop = quoted(database);

        JsonNode standing = accept(shop, "--plan", "quarterly", "--po", "77", "--on", "2026-05-20", "--start",
                "2027-06-01");

        assertThat(standing.path("state").asString()).isEqualTo("accepted");
        assertThat(standing.path("made").asString()).isEqualTo("A-2026-008");
        assertThat(standing.path("accepted").path("name").asString()).isEqualTo("J. Baker");
        JsonNode next = shop.json("agreement", "next", "A-2026-008").path("installment");
        assertThat(next.path("due").asString()).isEqualTo("2027-06-01");
        assertThat(new BigDecimal(next.path("net").asString())).isEqualByComparingTo("268.75");
        JsonNode bill = shop.runAt(JUNE, "invoice", "issue", "A-2026-008", "--installment", "1", "--date",
                "2027-06-01", "--json").json().path("papers").get(0);
        assertThat(new BigDecimal(bill.path("gross").asString())).isEqualByComparingTo("292.60");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** By hand: 60 days before 1 June 2028 is 2 April, so 1 April is the last day to refuse. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void acceptedPlan_saysWhatTheShopUsuallyAgrees_unlessSomethingElseIsSaid(Database database) throws IOException {
        BookShop shop = quoted(database);
        shop.json("shop", "change", "cancel-days=45", "refuse-days=60", "renewal-months=24");

        accept(shop, "--plan", "quarterly", "--on", "2026-05-20", "--start", "2027-06-01", "--cancel-days", "10");

        JsonNode told = shop.json("agreement", "show", "A-2026-008");
        assertThat(told.path("refuseUntil").asString()).isEqualTo("2028-04-01");
        assertThat(told.path("cancelDays").asInt()).isEqualTo(10);
        assertThat(shop.json("show", "A-2026-008").toString()).contains("\"months\":24");
        assertThat(shop.json("shop", "show").path("agreed").path("cancelDays").asInt()).isEqualTo(45);
        assertThat(shop.problems("shop", "change", "refuse-days=400")).singleElement().asString()
                .contains("refuseDays");
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void answeredQuote_isToldSoWhereverItIsListed(Database database) throws IOException {
        BookShop shop = quoted(database);
        assertThat(state(shop)).isEqualTo("lapsed");

        shop.json("quote", "decline", "MQ-2026-00001", "--reason", "not-now", "--words", "After the summer.", "--on",
                "2026-05-21");
        assertThat(state(shop)).isEqualTo("declined");
        JsonNode declined = shop.json("show", "MQ-2026-00001").path("paper").path("quote");
        assertThat(declined.path("declined").path("reason").asString()).isEqualTo("not-now");
        assertThat(declined.path("declined").path("words").asString()).isEqualTo("After the summer.");

        accept(shop, "--plan", "semiannual", "--on", "2026-06-10", "--start", "2027-06-01");
        assertThat(state(shop)).isEqualTo("accepted");
        assertThat(shop.json("agreement", "show", "A-2026-008").toString()).contains("\"semiannual\"", "650.0");
    }

    /** By hand: the bakery's quarterly plan is recommended, at 1,075.00; it took the semiannual one, at 650.00. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void quotesWonAndLost_areSummedUpByReasonAndPrice(Database database) throws IOException {
        BookShop shop = quoted(database);
        assertThat(shop.run("quote", "outcomes").out()).contains("lapsed", "USD 1075.00");

        shop.json("quote", "decline", "MQ-2026-00001", "--reason", "price", "--on", "2026-05-21");
        JsonNode lost = shop.json("quote", "outcomes", "--month", "2026-05");
        assertThat(lost.path("reasons").get(0).path("name").asString()).isEqualTo("price");
        assertThat(lost.path("reasons").get(0).path("net").asString()).isEqualTo("1075.00");

        accept(shop, "--plan", "semiannual", "--on", "2026-06-10", "--start", "2027-06-01");
        JsonNode won = shop.json("quote", "outcomes");
        assertThat(won.path("reasons")).isEmpty();
        assertThat(won.path("outcomes")).hasSize(1);
        assertThat(won.path("outcomes").get(0).path("name").asString()).isEqualTo("accepted");
        assertThat(won.path("outcomes").get(0).path("net").asString()).isEqualTo("650.00");
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void whatCannotBeAccepted_isToldAtOnce_andNothingIsKept(Database database) throws IOException {
        BookShop shop = quoted(database);

        assertThat(shop.problems(line("--plan", "monthly", "--on", "2026-06-14"))).containsExactly(
                ":0: day: the prices held until 2026-06-13 (a day up to that, another quote, or the shop's word that it"
                        + " holds them)",
                ":0: plan: there is no plan of this quote \"monthly\" (allowed: quarterly, semiannual)");
        assertThat(shop.problems(line("--plan", "quarterly", "--on", "2027-01-02"))).containsExactly(
                ":0: day: 2027-01-02 is still to come: today is 2026-12-30 (today or an earlier day)");
        assertThat(shop.problems(line("--plan", "quarterly", "--on", "2026-05-20", "--start", "2027-06-01",
                "--renewal-months", "7")).getFirst())
                .contains("goes on for 7 months at the price of a term of 12 months");
        assertThat(state(shop)).isEqualTo("lapsed");
        assertThat(shop.run("agreement", "show", "A-2026-008").status()).isNotZero();
    }

    /** The book would bill the same machines twice. */
    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void machinesUnderAnAgreement_areNotTakenUnderAnother(Database database) throws IOException {
        BookShop shop = quoted(database);
        assertThat(shop.problems(line("--plan", "quarterly", "--on", "2026-05-20"))).containsExactly(
                ":0: start: on 2026-06-01 agreement A-2026-004 looks after proof-room already (a later first day, or that"
                        + " agreement as the one that the quote became)");
        assertThat(accept(shop, "--plan", "quarterly", "--on", "2026-05-20", "--agreement", "A-2026-004").path("made")
                .asString()).isEqualTo("A-2026-004");
    }

    private BookShop quoted(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        shop.json("import", shop.folder().resolve("quotes/crumb-lane-plan.yaml").toString());
        shop.json("quote", "issue", "crumb-lane-plan", "--date", "2026-05-14");
        return shop;
    }

    private static JsonNode accept(BookShop shop, String... more) {
        return shop.json(line(more));
    }

    private static String[] line(String... more) {
        return Stream.of(List.of("quote", "accept", "MQ-2026-00001"), BAKER, List.of(more))
                .flatMap(List::stream).toArray(String[]::new);
    }

    private static String state(BookShop shop) {
        JsonNode row = shop.json("quote", "list").path("papers").get(0);
        return row.path("lapsed").asBoolean() ? "lapsed" : row.path("state").asString();
    }
}
