package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a visit recommended, until somebody does it. */
@Tag("wide")
class RecommendedRepairsTest {

    private static final String CLEANING = "Full cleaning with descaler; scale on the distributor.";
    private static final String SWITCH = "New float switch; the reed is worn.";

    private static final String QUOTE = "RQ-2026-00001";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource
    void recommendation_isQuoted_declined_shownAtTheNextVisit_andDone(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        assertThat(states(shop)).isEmpty();
        shop.json("visit", "add", shop.folder().resolve("visits/late-call.yaml").toString());
        // The demo plans the visit for the switch.
        assertThat(states(shop)).containsExactly(CLEANING + " wanted", SWITCH + " planned");
        shop.json("quote", "issue", "float-switch", "--date", "2026-12-14");
        assertThat(states(shop)).containsExactly(CLEANING + " wanted", SWITCH + " quoted");
        shop.json("quote", "decline", QUOTE, "--reason", "price", "--on", "2026-12-16");
        assertThat(states(shop)).containsExactly(CLEANING + " wanted", SWITCH + " refused");

        Path next = written(shop, "next-visit", "planned-visit", "2026-12-30", "");
        shop.json("import", next.toString());
        assertThat(sheet(shop, "next-visit")).contains("Declined before", SWITCH, "Accepted before; is it done?",
                CLEANING,
                "May 13, 2026");

        shop.json("visit", "add", written(shop, "next-visit", "visit", "2026-12-30", """
                    settled:
                      - visit: late-call
                        recommended: %s
                    recommended:
                      - text: %s
                        accepted: true
                """.formatted(CLEANING, SWITCH)).toString());
        // What is recommended again is one, as it was said last.
        assertThat(states(shop)).containsExactly(SWITCH + " wanted");

        shop.json("visit", "withdraw", "next-visit", "--reason", "Nobody was there.");
        assertThat(states(shop)).containsExactly(CLEANING + " wanted", SWITCH + " refused");
        shop.json("quote", "accept", QUOTE, "--by", "D. Okafor", "--way", "mail", "--on", "2026-12-30");
        assertThat(states(shop)).containsExactly(CLEANING + " wanted", SWITCH + " accepted");
        shop.json("visit", "add", written(shop, "float-switch", "visit", "2026-12-30", "").toString());
        assertThat(states(shop)).containsExactly(CLEANING + " wanted");
        assertThat(shop.json("job", "recommended", "hotel-fernhill").path("repairs")).isEmpty();
        assertThat(shop.problems("job", "recommended", "nowhere").getFirst())
                .contains("the book has no site \"nowhere\"");
    }

    private static List<String> states(BookShop shop) {
        return StreamSupport.stream(shop.json("job", "recommended").path("repairs").spliterator(), false)
                .map(row -> row.path("recommended").asString() + " " + row.path("state").asString()).toList();
    }

    private static String sheet(BookShop shop, String visit) throws IOException {
        return Files.readString(Path.of(shop.json("visit", "worksheet", visit, "--html").path("files").get(1)
                .asString()));
    }

    /** @param more keys of the machine */
    private static Path written(BookShop shop, String id, String form, String day, String more) throws IOException {
        return Files.writeString(shop.folder().resolve(id + "-" + form + ".yaml"), """
                format: 1
                form: %s
                id: %s
                site: pennon-wharf-taproom
                people:
                  - name: Ada Quill
                    grade: lead
                    arrived: %sT09:00
                    left: %sT10:15
                    on: repair
                machines:
                  - machine: back-bar
                    complaint: Little ice.
                    tasks:
                      - task: brush-condenser
                """.formatted(form, id, day, day) + more);
    }
}
