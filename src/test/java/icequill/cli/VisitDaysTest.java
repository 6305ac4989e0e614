package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Days proposed for the visits of the invented shop, stored in a book of either kind. */
class VisitDaysTest {

    @TempDir
    private Path folder;

    /**
     * Due up to 15 September are the second visits of the bakery and of the camp, both on the first, a Tuesday; the first ones are
     * nearer to the second by 3 August, but for those of the plan that is semiannual, which are late. Ada has the cleaning at the bakery planned.
     */
    @ParameterizedTest
    @EnumSource(Database.class)
    void proposals_areStoredAsPlannedVisits_andAskedAgainThereAreNone(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        String[] store = {"visit", "days", "--from", "2026-08-03", "--until", "2026-09-15", "--store"};

        JsonNode stored = shop.json(store);

        assertThat(rows(stored).stream().filter(row -> row.contains(" 2026-09-"))).hasSize(2)
                .allMatch(row -> row.startsWith("2026-09-01"));
        assertThat(rows(stored)).noneMatch(row -> row.endsWith("tamarack-camp 2026-06-01"));
        JsonNode first = stored.path("visits").get(0);
        JsonNode visit = shop.json("visit", "show", first.path("visit").asString()).path("visit").path("visit");
        assertThat(visit.path("state").asString()).isEqualTo("planned");
        assertThat(visit.path("began").asString())
                .startsWith(first.path("day").asString() + "T" + first.path("begins").asString());
        assertThat(shop.json(store).path("visits")).isEmpty();
        assertThat(shop.run("audit").status()).isZero();
    }

    private static List<String> rows(JsonNode days) {
        List<String> rows = new ArrayList<>();
        days.path("visits").forEach(visit -> rows.add(visit.path("day").asString() + " "
                + visit.path("begins").asString() + " " + visit.path("going").get(0).path("person").asString() + " "
                + visit.path("site").asString() + " " + visit.path("due").asString()));
        return rows;
    }
}
