package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/**
 * Ten hours sold ahead for 900.00, that is 1.50 a minute, and what later visits take from them. An hour at list is 98.00, coming out
 * 52.00, all of it taxed at 8.875 %.
 */
@Tag("wide")
class PrepaidBlockTest {

    private static final String TEN_HOURS = "{minutes: 600}";

    @TempDir
    Path folder;
    private BookShop shop = new BookShop(Path.of(""));

    private void shop(Database database) throws IOException {
        shop = BookShop.in(folder.resolve("shop"), database);
        shop.json("customer", "add", "mill", "--name", "Mill Bakeries", "--payment-days", "30", "--street",
                "4 Mill Lane", "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country", "US");
        for (String site : new String[]{"lane", "quay"}) {
            shop.json("site", "add", site, "--customer", "mill", "--name", "Mill " + site, "--kind", "bakery",
                    "--miles", "3", "--tax-place", "alder-county", "--street", "4 Mill Lane", "--city", "Alderton",
                    "--region", "NY", "--postal-code", "10999", "--country", "US");
        }
    }

    /** 105 of 600 minutes are worth 157.50 of 900.00; the 52.00 for coming out bear 4.615 of tax. */
    @ParameterizedTest
    @EnumSource(Database.class)
    void billedMinutes_arePaidByTheBlock_atList(Database database) throws IOException {
        shop(database);
        sell("ahead", "2026-05-04", TEN_HOURS);
        assertThat(issue("ahead").path("gross").asString()).isEqualTo("979.88");
        visit("first", "2026-05-13", "10:00", "11:45");

        JsonNode labor = shop.json("price", "first").path("lines").get(1);
        JsonNode issued = later("first");

        JsonNode card = shop.json("site", "card", "lane");
        assertThat(card.path("ahead").get(0).path("left").asInt()).isEqualTo(495);
        assertThat(shop.run("site", "card", "lane").out().replace("\u00a0", " "))
                .contains("Sold ahead: Ten hours ahead of May 4, 2026: 495 min of 600 min left");
        assertThat(labor.path("list").asString()).isEqualTo("171.50");
        assertThat(labor.path("allowance").asString()).isEqualTo("171.50");
        assertThat(labor.path("net").asString()).isEqualTo("0.00");
        assertThat(told(labor)).contains(
                "paid ahead as “Ten hours ahead” of May 4, 2026 (ahead): 105 min of 600 min for 900.00, worth 157.50; 495 min left");
        assertThat(issued.path("gross").asString()).isEqualTo("56.62");
        visit("second", "2026-05-14", "10:00", "11:00");
        assertThat(reasons("second", 1)).contains("60 min of 600 min for 900.00, worth 90.00; 435 min left");
        assertThat(reasons("first", 1)).contains("495 min left");
        assertThat(shop.json("paper", "rework", "INV-2026-00002").path("differences").size()).isZero();
        assertThat(shop.json("credit", "issue", "INV-2026-00002", "--reason", "All.", "--date", "2026-05-20")
                .path("papers").get(0).path("gross").asString()).isEqualTo("-56.62");
        assertThat(reasons("second", 1)).contains("540 min left");
    }

    /** The first hour empties the older block; half an hour is of the younger one, 7.50 a minute short of what it has. */
    @Test
    void theOldestBlock_isUsedFirst_andTheRestIsAtList() throws IOException {
        shop(Database.SQLITE);
        sell("older", "2026-05-04", "{minutes: 60, on: [repair]}");
        sell("younger", "2026-05-05", "{minutes: 30, on: [repair]}");
        issue("older");
        issue("younger");
        visit("long", "2026-05-13", "10:00", "12:00");

        JsonNode lines = shop.json("price", "long").path("lines");

        assertThat(lines).extracting(line -> line.path("net").asString()).containsExactly("52.00", "0.00", "0.00",
                "49.00");
        assertThat(told(lines.get(1))).contains("(older): 60 min of 60 min", "0 min left");
        assertThat(told(lines.get(2))).contains("(younger): 30 min of 30 min", "0 min left");
    }

    /** After hours each minute counts one and a half: 100 minutes reach 66 of 75, which take 99; nine are at 147.00 an hour. */
    @Test
    void aFactorOfTheBand_usesMoreOfIt() throws IOException {
        shop(Database.SQLITE);
        sell("ahead", "2026-05-04", "{minutes: 100, on: [repair], factors: {after-hours: 1.5}}");
        issue("ahead");
        visit("late", "2026-05-13", "18:00", "19:15");

        JsonNode lines = shop.json("price", "late").path("lines");

        assertThat(lines).extracting(line -> line.path("net").asString()).containsExactly("78.00", "0.00", "22.05");
        assertThat(told(lines.get(1))).contains("66 min count 1.5 times there (after hours)",
                "99 min of 100 min for 900.00, worth 891.00; 1 min left");
    }

    /** Each visit pays for coming out and repair, 300.00 of 900.00; what else there is, is to be paid. */
    @Test
    void visits_arePaidWhole_andTogetherOneAfterTheOther() throws IOException {
        shop(Database.SQLITE);
        sell("ahead", "2026-05-04", "{visits: 3, on: [repair, travel], until: 2026-05-14}");
        issue("ahead");
        visit("one", "2026-05-13", "10:00", "11:00");
        visit("two", "2026-05-14", "10:00", "11:00");
        visit("three", "2026-05-15", "10:00", "11:00");

        assertThat(shop.json("price", "three").path("net").asString()).isEqualTo("150.00");
        JsonNode together = later("one", "two", "--together");

        assertThat(together.path("gross").asString()).isEqualTo("0.00");
        assertThat(reasons("one", 0)).contains("1 visit of 3 visits for 900.00, worth 300.00; 1 visit left");
        assertThat(reasons("one", 1)).contains("paid ahead by the same visit of “Ten hours ahead” (ahead)");
        shop.json("paper", "reprint", "INV-2026-00002", "--html", "--xml");
        assertThat(Files.readString(shop.folder().resolve("papers/INV-2026-00002.html"))
                .replace("\u00a0", " ")).contains(
                        "worth 300.00; 2 visits left", "worth 300.00; 1 visit left");
        assertThat(shop.json("paper", "rework", "INV-2026-00002").path("differences").size()).isZero();
    }

    /** Sold without tax, 900.00; 105 minutes are taxed at what they were sold for: 209.50 at 8.875 % is 18.593. */
    @Test
    void whereItIsTaxedAtUse_whatIsUsedBearsItsTax() throws IOException {
        shop(Database.SQLITE);
        Path taxes = shop.folder().resolve("pricing/taxes.yaml");
        Files.writeString(taxes, Files.readString(taxes).replace("    # blocks: at-sale", "    blocks: at-use"));
        sell("ahead", "2026-05-04", TEN_HOURS);
        assertThat(issue("ahead").path("gross").asString()).isEqualTo("900.00");
        visit("first", "2026-05-13", "10:00", "11:45");

        JsonNode price = shop.json("price", "first");

        assertThat(price.path("lines")).extracting(line -> line.path("net").asString()).containsExactly("52.00",
                "0.00", "157.50", "-157.50");
        assertThat(price.path("net").asString()).isEqualTo("52.00");
        assertThat(issue("first").path("gross").asString()).isEqualTo("70.59");
        for (String number : new String[]{"INV-2026-00001", "INV-2026-00002"}) {
            shop.json("paper", "reprint", number, "--xml");
        }
    }

    @Test
    void whatIsNotBilled_orGivenBack_orElsewhere_paysForNothing() throws IOException {
        shop(Database.SQLITE);
        sell("ahead", "2026-05-04", TEN_HOURS);
        visit("first", "2026-05-13", "10:00", "11:00");

        assertThat(shop.json("price", "first").path("net").asString()).isEqualTo("150.00");
        issue("ahead");
        assertThat(shop.json("price", "first").path("net").asString()).isEqualTo("52.00");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "Given back.", "--date", "2026-05-20");
        assertThat(shop.json("price", "first").path("net").asString()).isEqualTo("150.00");
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', value = {
            "{on: [repair]} | price: 900 | needs minutes or visits",
            "{minutes: 60, visits: 2, on: [repair]} | price: 900 | needs minutes or visits",
            "{minutes: 60, on: [parts]} | price: 900 | minutes of what is no labor",
            "{minutes: 60, on: [repair]} | price: 900, amount: 2 | sold ahead, but not as one thing",
            "{minutes: 60, on: [repair]} | price: 900, outcome: goodwill | sold ahead, but not charged",
            "{minutes: 60, on: [repair], factors: {evenings: 2}} | price: 900 | there is no labor band \"evenings\"",
            "{minutes: 60, on: [repair], until: 2026-05-03} | price: 900 | to be used by 2026-05-03, but sold on 2026-05-04",
            "{minutes: 0} | price: 900 | found the number 0"})
    void whatIsNoBlock_isAProblem(String block, String more, String problem) throws IOException {
        shop(Database.SQLITE);

        assertThat(shop.problems("import", sale("ahead", "2026-05-04", more + ", block: " + block).toString()))
                .singleElement().asString().contains(problem, "ahead.yaml");
    }

    private String reasons(String visit, int line) {
        return told(shop.json("price", visit).path("lines").get(line));
    }

    private static String told(JsonNode line) {
        return line.path("why").toString().replace("\u00a0", " ");
    }

    private JsonNode issue(String visit) {
        return shop.json("invoice", "issue", visit, "--date", "2026-05-18").path("papers").get(0);
    }

    /** An hour after all else: what a paper is worked out from was there before it. */
    private JsonNode later(String... asked) {
        List<String> line = new ArrayList<>(List.of("invoice", "issue"));
        line.addAll(List.of(asked));
        line.addAll(List.of("--date", "2026-05-20", "--json"));
        return shop.runAt(Clock.offset(BookShop.CLOCK, Duration.ofHours(1)), line.toArray(String[]::new)).json()
                .path("papers").get(0);
    }

    private void sell(String id, String day, String block) throws IOException {
        shop.json("import", sale(id, day, "price: 900, block: " + block).toString());
    }

    private Path sale(String id, String day, String line) throws IOException {
        return shop.write("own/" + id + ".yaml", """
                format: 1
                form: sale
                id: %s
                site: lane
                sold: {on: %s, way: shipped}
                lines:
                  - {text: Ten hours ahead, class: repair, %s}
                """.formatted(id, day, line));
    }

    private void visit(String id, String day, String from, String until) throws IOException {
        shop.json("import", shop.write("own/" + id + ".yaml", """
                format: 1
                form: visit
                id: %s
                site: lane
                people:
                  - {name: Rosa, grade: lead, arrived: %sT%s, left: %sT%s, on: repair}
                """.formatted(id, day, from, day, until)).toString());
    }
}
