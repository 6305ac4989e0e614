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
}
