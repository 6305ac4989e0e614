package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Visits that are due in the invented shop, whose agreements all begin on 1 June 2026. */
class DueVisitsTest {

    @TempDir
    private Path folder;
    private BookShop shop;

    @BeforeEach
    void open() throws IOException {
        shop = BookShop.in(folder, Database.SQLITE);
    }

    /**
     * By hand, without the visit that the shop has planned at the bakery: the bakery's plan is quarterly, so 1 June, September, December and March; the hotel's is semiannual, so 1 June and December;
     * the camp is open from June to September, its term four months long.
     */
    @Test
    void calendars_giveTheWeeks_andTheCampHasNoVisitAfterItsSeason() {
        withdrawn();
        JsonNode due = due("2026-05-20", "2026-12-31");

        assertThat(rows(due, "crumb-lane-bakery")).containsExactly("2026-06-01 2026-06-01 due",
                "2026-08-31 2026-09-01 due", "2026-11-30 2026-12-01 due");
        assertThat(rows(due, "hotel-fernhill")).containsExactly("2026-06-01 2026-06-01 due",
                "2026-11-30 2026-12-01 due");
        assertThat(rows(due, "tamarack-camp")).containsExactly("2026-06-01 2026-06-01 due",
                "2026-08-31 2026-09-01 due");
    }

    /** A cleaning planned for 14 July is that of June; the hotel's of 16 June is recorded, so it is taken off. */
    @Test
    void plannedVisit_standsInItsWeek_andARecordedOneIsTakenOff() {
        assertThat(rows(due("2026-06-10", "2026-06-30"), "crumb-lane-bakery"))
                .containsExactly("2026-07-13 2026-06-01 planned");

        withdrawn();
        assertThat(rows(due("2026-06-10", "2026-06-30"), "crumb-lane-bakery"))
                .containsExactly("2026-06-01 2026-06-01 late");

        assertThat(rows(due("2026-06-16", "2026-06-30"), "hotel-fernhill")).hasSize(1);
        shop.json("visit", "add", folder.resolve("visits/included-visit-hotel.yaml").toString());
        assertThat(rows(due("2026-06-16", "2026-06-30"), "hotel-fernhill")).isEmpty();
    }

    @Test
    void missedVisit_isListedApart_onceTheNextOneIsDue() {
        withdrawn();
        JsonNode due = due("2026-09-02", "2026-10-01");

        List<String> missed = new ArrayList<>();
        due.path("missed").forEach(row -> missed.add(row.path("site").asString() + " " + row.path("due").asString()));
        assertThat(missed).contains("crumb-lane-bakery 2026-06-01").doesNotContain("hotel-fernhill 2026-06-01");
        assertThat(rows(due, "crumb-lane-bakery")).containsExactly("2026-08-31 2026-09-01 late");
    }

    /** The taproom has draught beer, so three months are recommended; the clinic was never cleaned, and 23 April was the first visit. */
    @Test
    void siteWithoutAnAgreement_isDueByItsCleanings() {
        shop.json("visit", "add", folder.resolve("visits/goodwill-clinic.yaml").toString());

        List<String> sites = new ArrayList<>();
        due("2026-06-01", "2027-06-01").path("sites").forEach(row -> sites.add(row.path("site").asString() + " "
                + row.path("due").asString() + " " + row.path("last").asString("never")));

        assertThat(sites).contains("harbor-street-clinic 2026-10-23 never")
                .noneMatch(site -> site.startsWith("hotel-fernhill"));
    }

    @Test
    void dayBeforeToday_isRefused() {
        assertThat(shop.problems("visit", "due", "--date", "2026-06-01", "--until", "2026-05-31")).singleElement()
                .asString().contains("until: visits due up to 2026-05-31, seen from 2026-06-01");
    }

    private void withdrawn() {
        shop.json("visit", "withdraw", "summer-cleaning-bakery", "--reason", "The ovens are moved.");
    }

    private JsonNode due(String day, String until) {
        return shop.json("visit", "due", "--date", day, "--until", until);
    }

    private static List<String> rows(JsonNode due, String site) {
        List<String> rows = new ArrayList<>();
        due.path("weeks").forEach(week -> week.path("visits").forEach(visit -> {
            if (visit.path("site").asString().equals(site)) {
                rows.add(week.path("monday").asString() + " " + visit.path("due").asString() + " "
                        + visit.path("state").asString());
            }
        }));
        return rows;
    }
}
