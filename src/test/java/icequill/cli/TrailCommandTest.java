package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The trail as it is told; the shop is in New York, five hours behind UTC in December. */
class TrailCommandTest {

    private static final String USER = System.getProperty("user.name");
    /** Half past eleven at night of December 30 where the shop is. */
    private static final Clock LATE = Clock.fixed(Instant.parse("2026-12-31T04:30:00Z"), ZoneOffset.UTC);

    @TempDir
    static Path common;

    private static BookShop shop;

    @BeforeAll
    static void changes() throws IOException {
        shop = BookShop.in(common.resolve("shop"), Database.SQLITE);
        for (String name : new String[]{"mill-lane", "quarry-inn"}) {
            shop.json("customer", "add", name, "--name", "The " + name, "--payment-days", "20", "--street",
                    "4 Mill Lane; Rear", "--city", "Alderton", "--region", "NY", "--postal-code", "10999", "--country",
                    "US");
        }
        shop.issue("late-call", "2026-05-14");
        assertThat(shop.runAt(LATE, "customer", "change", "mill-lane", "--payment-days", "25", "--language", "es")
                .status()).isZero();
        shop.run("customer", "forget", "quarry-inn", "--yes");
    }

    @Test
    void change_isToldByWhenWhoWhatAndTheKeysThatChanged() {
        assertThat(shop.run("audit", "trail", "mill-lane").out().lines()).containsExactly(
                "2026-12-30 23:30  " + USER + "  customer mill-lane changed", "    language: (nothing) -> es",
                "    paymentDays: 20 -> 25", "2026-12-30 12:00  " + USER + "  customer mill-lane added",
                "    billTo.1.city: Alderton, billTo.1.country: US, billTo.1.name: The mill-lane, billTo.1.postalCode:"
                        + " 10999, billTo.1.region: NY, billTo.1.street: 4 Mill Lane\\u000aRear, billTo.1.validFrom: ,"
                        + " claimsExemption: 0, name: The mill-lane, paymentDays: 20");
    }

    @Test
    void change_isToldAsJson() {
        JsonNode step = shop.json("audit", "trail", "mill-lane", "--most", "1").path("trail").get(0);

        assertThat(step.path("at").asString()).isEqualTo("2026-12-30T23:30:00-05:00");
        assertThat(step.path("who").asString()).isEqualTo(USER);
        assertThat(step.path("kind").asString() + " " + step.path("id").asString() + " "
                + step.path("event").asString()).isEqualTo("customer mill-lane changed");
        assertThat(step.path("changes").get(1).toString())
                .isEqualTo("{\"key\":\"paymentDays\",\"before\":\"20\",\"after\":\"25\"}");
        assertThat(shop.json("audit", "trail", "mill-lane", "--most", "1").path("more").asBoolean()).isTrue();
    }

    /** The worked example of the shop's late call comes to 301.13. */
    @Test
    void issuedPaper_isToldByItsNumber() {
        assertThat(shop.run("audit", "trail", "INV-2026-00001").out()).contains("paper INV-2026-00001 issued",
                "customer: pennon-wharf-taproom", "gross: 301.13 USD", "visit: late-call");
    }

    @Test
    void forgottenCustomer_isToldWithoutWhatHeWas() {
        assertThat(shop.run("audit", "trail", "quarry-inn").out().lines()).containsExactly(
                "2026-12-30 12:00  " + USER + "  customer quarry-inn forgotten",
                "    what it was is forgotten with its customer",
                "2026-12-30 12:00  " + USER + "  customer quarry-inn added",
                "    what it was is forgotten with its customer");
        assertThat(shop.run("audit").status()).isZero();
    }

    @Test
    void days_areThoseOfTheShop() {
        assertThat(shop.run("audit", "trail", "--from", "2026-12-31").out()).isEqualToIgnoringNewLines(
                "No change in the trail fits.");
        assertThat(
                shop.json("audit", "trail", "mill-lane", "--from", "2026-12-30", "--until", "2026-12-30").path("trail"))
                .hasSize(2);
        assertThat(shop.json("audit", "trail", "--who", "nobody").path("trail")).isEmpty();
        assertThat(shop.json("audit", "trail", "--who", USER).path("trail")).hasSizeGreaterThan(5);
    }

    @Test
    void whatCannotBe_isSaid() {
        assertThat(shop.problems("audit", "trail", "mill-lame").getFirst()).contains(
                "the book has no trail of \"mill-lame\"",
                "did you mean \"mill-lane\"?");
        assertThat(shop.problems("audit", "trail", "--from", "2026-12-30", "--until", "2026-12-29").getFirst())
                .contains("--until 2026-12-29 is before --from 2026-12-30", "a last day on or after the first");
    }
}
