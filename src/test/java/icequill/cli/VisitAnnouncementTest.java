package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Customers are told of planned visits, and who has to be told anew is seen. */
@Tag("wide")
class VisitAnnouncementTest {

    private static final String VISIT = "next-taproom";

    @TempDir
    private Path folder;

    /** A machine of 500 lb in 24 hours that is off for at most 2 hours makes up to 41.67 lb less, told as 42. */
    @ParameterizedTest
    @EnumSource
    void plannedVisit_isAnnounced_andToldAnewOnceItMoved(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        plan(shop, "2027-01-12");
        assertThat(state(shop)).isEqualTo("not-told");

        JsonNode written = shop.json("visit", "announce", VISIT, "--html");
        assertThat(written.path("files")).hasSize(2);
        String paper = Files.readString(shop.folder().resolve("papers/announcement-" + VISIT + ".html"));
        assertThat(paper.substring(paper.indexOf("<body")).replace('\u00a0', ' ')).contains(
                "We come on Tuesday, January 12, 2027, from 9:00 AM to 11:00 AM", "Ada Quill",
                "It makes no ice for up to 2 h while we work; at its rating that is up to 42 lb.", "555-0142")
                .doesNotContain("98.00", "46.50", "USD");

        shop.json("visit", "announce", VISIT, "--told", "telephone", "--on", "2026-12-29");
        assertThat(state(shop)).isEqualTo("told");
        plan(shop, "2027-01-13");
        JsonNode moved = shop.json("visit", "announce", "--from", "2027-01-11").path("visits").get(0);
        assertThat(moved.path("state").asString()).isEqualTo("told-otherwise");
        assertThat(moved.path("told").asString()).isEqualTo("2026-12-29");
        assertThat(moved.path("way").asString()).isEqualTo("telephone");
        shop.json("visit", "announce", VISIT, "--told", "mail");
        assertThat(state(shop)).isEqualTo("told");

        assertThat(shop.problems("visit", "announce", VISIT, "--told", "mail", "--on", "2027-01-01").getFirst())
                .contains("2027-01-01");
        shop.json("visit", "withdraw", VISIT, "--reason", "Closed.");
        assertThat(shop.problems("visit", "announce", VISIT).getFirst()).contains("is not to come");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static String state(BookShop shop) {
        return shop.json("visit", "announce", VISIT).path("visits").get(0).path("state").asString();
    }

    private static void plan(BookShop shop, String day) throws IOException {
        shop.json("visit", "add", shop.write("plan.yaml", """
                format: 1
                form: planned-visit
                id: %s
                site: pennon-wharf-taproom
                people:
                  - {name: Ada Quill, grade: lead, arrived: %sT09:00, left: %sT11:00, on: cleaning}
                machines:
                  - {machine: back-bar, tasks: [{task: brush-condenser}, {task: sanitize}]}
                """.formatted(VISIT, day, day)).toString());
    }
}
