package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * The late call, charged at 276.58: 40 and 65 minutes of 46.50 an hour are 31.00 and 50.38, 36 miles of 0.725 are 26.10. At 45 miles an
 * hour the 36 take 0.8 hours, 37.20 more.
 */
class VisitEarningsTest {

    @TempDir
    private Path temporary;

    @Test
    void earnings_ofAVisit_withAndWithoutTheTimeOnTheRoad() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-20");

        JsonNode late = shop.json("visit", "earnings", "--from", "2026-05-13", "--until", "2026-05-13").path("total");
        assertThat(late.path("net").asString()).isEqualTo("276.58");
        assertThat(late.path("cost").asString()).isEqualTo("107.48");
        assertThat(late.path("margin").asString()).isEqualTo("169.10");
        assertThat(late.path("percent").asString()).isEqualTo("61.1");

        Path rates = shop.folder().resolve("pricing/service-call.yaml");
        Files.writeString(rates, Files.readString(rates).replace("mileCost:", "speed: 45\nmileCost:"));
        JsonNode driven = shop.json("visit", "earnings", "--by", "site", "--from", "2026-05-13", "--until",
                "2026-05-13");
        assertThat(driven.path("rows").get(0).path("name").asString()).isEqualTo("Pennon Wharf Taproom");
        assertThat(driven.path("total").path("cost").asString()).isEqualTo("144.68");
        assertThat(shop.run("price", "late-call", "--owner", "--how").out())
                .contains("aid time on the road of 1, at 45");

        shop.issue("ten-minute-brushing", "2026-05-20");
        assertThat(shop.json("visit", "earnings", "--by", "customer").path("rows")).hasSize(2);
        assertThat(shop.json("visit", "earnings", "--by", "tier").path("rows").get(0).path("name").asString())
                .isEqualTo("no agreement");
        assertThat(shop.problems("visit", "earnings", "--month", "2019-01").toString())
                .contains("no visit was done on these days");
    }

    /** 50.00 of goodwill leave 226.58 of 276.58; given back in whole nothing is left of it, and issued anew it is 276.58 again. */
    @Test
    void earnings_afterCredits_areWhatIsLeft() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-20");
        String[] day = {"visit", "earnings", "--from", "2026-05-13", "--until", "2026-05-13"};

        shop.json("credit", "issue", "INV-2026-00001", "--reason", "x", "--amount", "50", "--date", "2026-05-21");
        assertThat(shop.json(day).at("/total/net").asString()).isEqualTo("226.58");
        assertThat(shop.json(day).at("/total/margin").asString()).isEqualTo("119.10");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "x", "--date", "2026-05-21");
        assertThat(shop.json(day).at("/total/net").asString()).isEqualTo("0.00");
        assertThat(shop.json(day).at("/total/margin").asString()).isEqualTo("-107.48");
        shop.issue("late-call", "2026-05-22");
        assertThat(shop.json(day).at("/total/net").asString()).isEqualTo("276.58");
    }

    /**
     * 301.13 for the late call are paid by card at 2.9 % and 0.30: 200.00 of them 5.80 + 0.30, 6.10; 101.13 out of a payment of 202.26
     * 2.93277 + 0.15, hence 3.08. What is paid by check costs nothing.
     */
    @Test
    void earnings_paidByCard_costWhatThatCosts() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        Path rates = shop.folder().resolve("pricing/adjustments.yaml");
        Files.writeString(rates, Files.readString(rates) + "\ncardCost: {percent: 2.9, each: 0.30}\n");
        shop.issue("late-call", "2026-05-20");
        String[] day = {"visit", "earnings", "--from", "2026-05-13", "--until", "2026-05-13"};
        String payer = "pennon-wharf-taproom";

        shop.json("payment", "add", payer, "200.00", "--date", "2026-06-02", "--way", "card", "--for",
                "INV-2026-00001");
        assertThat(shop.json(day).at("/total/cost").asString()).isEqualTo("113.58");
        shop.json("payment", "add", payer, "202.26", "--date", "2026-06-03", "--way", "card", "--for",
                "INV-2026-00001");
        assertThat(shop.json(day).at("/total/cost").asString()).isEqualTo("116.66");
    }

    /**
     * A rented lift of 120.00 whose cost nobody wrote down earns nobody knows what: beside it 26.10 of miles and 46.50 of an hour stand
     * against 52.00 and 98.00. Two customers of one name are two rows.
     */
    @Test
    void earnings_costNotKnown_andTwoCustomersOfOneName() throws IOException {
        BookShop shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        Path form = Files.writeString(temporary.resolve("lift.yaml"), """
                format: 1
                form: visit
                site: pennon-wharf-taproom
                people: [{name: Ada Quill, grade: lead, arrived: 2026-07-08T09:00, left: 2026-07-08T10:00, on: repair}]
                lines: [{text: rented lift, class: travel, price: 120.00}]
                """);
        shop.json("import", form.toString());
        String[] day = {"visit", "earnings", "--from", "2026-07-08", "--until", "2026-07-08"};

        JsonNode total = shop.json(day).path("total");
        assertThat(total.path("net").asString()).isEqualTo("270.00");
        assertThat(total.path("withoutCost").asString()).isEqualTo("120.00");
        assertThat(total.path("margin").asString()).isEqualTo("77.40");
        assertThat(total.path("percent").asString()).isEqualTo("51.6");
        assertThat(shop.run(day).out()).contains("cost not known", "120.00");
        JsonNode price = shop.json("price", "lift", "--owner");
        assertThat(price.path("margin").asString()).isEqualTo("77.40");
        assertThat(price.path("withoutCost").asString()).isEqualTo("120.00");
        assertThat(price.at("/lines/2/costWhy/0").asString()).contains("was not written down");
        assertThat(price.at("/lines/2").has("margin")).isFalse();
        assertThat(shop.run("price", "lift", "--owner").out()).contains("not known",
                "net of lines whose cost is not known");

        shop.json("invoice", "issue", "lift", "--date", "2026-07-09");
        shop.json("credit", "issue", "INV-2026-00001", "--reason", "x", "--lines", "3", "--amount", "20", "--date",
                "2026-07-09");
        assertThat(shop.json(day).at("/total/withoutCost").asString()).isEqualTo("100.00");
        assertThat(shop.json(day).at("/total/margin").asString()).isEqualTo("77.40");

        shop.issue("ten-minute-brushing", "2026-07-09");
        shop.json("customer", "change", "crumb-lane-bakery", "--name", "Pennon Wharf Taproom");
        assertThat(shop.json("visit", "earnings", "--by", "customer").path("rows")).hasSize(2);
        assertThat(shop.run("visit", "earnings", "--by", "customer").out()).contains(
                "Pennon Wharf Taproom (crumb-lane-bakery)", "Pennon Wharf Taproom (pennon-wharf-taproom)");
    }
}
