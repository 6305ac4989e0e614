package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** What a warranty pays, from the visit to the payer's answer. */
@Tag("wide")
class ClaimLifeTest {

    private static final String CLAIM = "warranty-pump-bakery";

    @TempDir
    private Path folder;

    /** The pump, 2 June and 30 days: 2 July; 45 days: 17 July. */
    @ParameterizedTest
    @EnumSource
    void work_isNoted_sent_paid(Database database) throws IOException {
        BookShop shop = done(database);
        assertThat(shop.json("claim", "list").path("unclaimed")).extracting(JsonNode::asString)
                .containsExactly(CLAIM);

        assertThat(shop.json("visit", "show", CLAIM).path("visit").path("unclaimed").asBoolean()).isTrue();

        JsonNode claim = shop.json("claim", "note", CLAIM, "--on", "2026-06-03").path("claims").get(0);
        JsonNode visit = shop.json("visit", "show", CLAIM).path("visit");
        assertThat(visit.path("claims")).containsExactly(claim);
        assertThat(visit.path("unclaimed").asBoolean()).isFalse();
        assertThat(shop.run("visit", "show", CLAIM).out()).contains("Warranty claim warranty-pump-bakery: noted since");
        assertThat(claim.path("state").asString()).isEqualTo("noted");
        assertThat(claim.path("payer").asString()).isEqualTo("the maker's claims desk (demo)");
        assertThat(claim.path("sendBy").asString()).isEqualTo("2026-07-02");
        assertThat(claim.path("returnBy").asString()).isEqualTo("2026-07-17");
        assertThat(claim.path("allowed")).isEqualTo(claim.path("listed"));
        JsonNode today = shop.json("today").path("claims").get(0);
        assertThat(today.path("by").asString()).isEqualTo("2026-07-02");
        assertThat(shop.json("claim", "list").path("unclaimed")).isEmpty();
        assertThat(shop.problems("claim", "note", CLAIM).getFirst()).contains("is claimed already");
        assertThat(shop.problems("claim", "pay", CLAIM, "90.00", "--on", "2026-06-04").getFirst())
                .contains("the claim was not sent yet");

        shop.json("claim", "send", CLAIM, "--reference", "RMA-118", "--on", "2026-06-04");
        shop.json("claim", "return", CLAIM, "--on", "2026-06-05");
        JsonNode paid = shop.json("claim", "pay", CLAIM, "90.00", "--on", "2026-06-30");
        assertThat(paid.path("paid").asString()).isEqualTo("90.00");
        assertThat(paid.path("returned").asString()).isEqualTo("2026-06-05");

        assertThat(shop.json("claim", "list").path("claims")).isEmpty();
        assertThat(shop.json("claim", "list", "--all").path("claims")).hasSize(1);
        assertThat(shop.json("today").path("claims")).isEmpty();
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = "SQLITE")
    void refused_isLeftToAPerson(Database database) throws IOException {
        BookShop shop = done(database);
        shop.json("claim", "note", CLAIM, "--on", "2026-06-03");
        shop.json("claim", "send", CLAIM, "--on", "2026-06-04");
        assertThat(shop.problems("claim", "refuse", CLAIM, "--reason", " ", "--on", "2026-06-10").getFirst())
                .contains("no reason is given");

        Run refused = shop.run("claim", "refuse", CLAIM, "--reason", "Scale, not a fault.", "--on", "2026-06-10");

        assertThat(refused.out()).contains("Scale, not a fault.", "for a person to decide");
        assertThat(shop.problems("claim", "note", "late-call").getFirst()).contains("late-call");
    }

    private BookShop done(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        Path rates = shop.folder().resolve("pricing/adjustments.yaml");
        Files.writeString(rates, Files.readString(rates)
                + "\nwarrantyPayers:\n  - {name: the maker's claims desk (demo), hourly: 85.00, mostMinutes: 120,"
                + " sendDays: 30, returnDays: 45}\n");
        if (database == Database.POSTGRESQL) {
            shop.json("rates", "adopt", "--yes");
        }
        shop.json("visit", "add", shop.folder().resolve("visits/warranty-pump-bakery.yaml").toString());
        return shop;
    }
}
