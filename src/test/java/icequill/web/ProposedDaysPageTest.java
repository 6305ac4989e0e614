package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Days proposed on a page, changed there, and stored. */
@Tag("wide")
class ProposedDaysPageTest {

    private static final String PAGE = "/today/days?from=2026-08-03&until=2026-09-15";

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() throws IOException {
        office = OpenOffice.of(FinishedDemo.copy(folder.resolve("shop")));
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void changedRow_isStoredAsItWasChanged_andSentTwiceIsStoredOnce() {
        JsonNode one = proposal("crumb-lane-bakery");
        Map<String, String> form = form(one);
        form.put("day-0", "2 September 2026");
        form.put("at-0", "11");
        form.put("person-0-0", "Sol Marrero");

        HttpResponse<String> answer = owner.post("/today/days", form);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        assertThat(owner.post("/today/days", form).statusCode()).isEqualTo(303);

        JsonNode visit = owner.json("/visits/crumb-lane-bakery-2026-09-02").path("visit");
        assertThat(visit.path("began").asString()).startsWith("2026-09-02T11:00");
        assertThat(owner.get("/visits/crumb-lane-bakery-2026-09-02-2").statusCode()).isEqualTo(404);
        assertThat(owner.get(PAGE).body()).doesNotContain(one.path("key").asString());
    }

    /** The bakery lets nobody in before nine; on 14 July at half past nine Ada is there already, for the visit that is planned. */
    @Test
    void whatCannotBeKept_isToldAtItsField_withAllThatWasTyped() {
        Map<String, String> form = form(proposal("crumb-lane-bakery"));
        form.put("at-0", "7:30");
        HttpResponse<String> early = owner.post("/today/days", form);
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(early.body()).contains("href=\"#at-0\"", "value=\"7:30\"",
                "but the site lets us in from 09:00 to 15:00");

        Map<String, String> nobody = form(proposal("crumb-lane-bakery"));
        nobody.put("person-0-0", "Nobody Known");
        nobody.put("day-0", "");
        assertThat(owner.post("/today/days", nobody).body()).contains("href=\"#day-0\"");

        Map<String, String> none = form(proposal("crumb-lane-bakery"));
        none.remove("visit-0");
        assertThat(owner.post("/today/days", none).body()).contains("No visit is ticked");
    }

    /** The bakery's visit lasts 96 minutes, so that at 12:00 Ada is still there. */
    @Test
    void onePersonAtTwoPlaces_isRefused() {
        Map<String, String> form = form(proposal("crumb-lane-bakery"));
        form.put("at-0", "11:00");
        JsonNode camp = proposal("tamarack-camp");
        form.put("visit-1", camp.path("key").asString());
        form.put("day-1", form.get("day-0"));
        form.put("at-1", "12:00");
        form.put("person-1-0", form.get("person-0-0"));

        HttpResponse<String> answer = owner.post("/today/days", form);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("href=\"#at-1\"", "is at &quot;crumb-lane-bakery&quot; then");
        assertThat(owner.get("/visits/crumb-lane-bakery-2026-09-01").statusCode()).isEqualTo(404);
    }

    private JsonNode proposal(String site) {
        JsonNode visits = owner.json(PAGE).path("visits");
        for (JsonNode visit : visits) {
            if (visit.path("site").asString().equals(site)) {
                return visit;
            }
        }
        throw new AssertionError(site + " is not among " + visits);
    }

    private Map<String, String> form(JsonNode visit) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("key", owner.key(PAGE));
        form.put("from", "2026-08-03");
        form.put("until", "2026-09-15");
        form.put("visit-0", visit.path("key").asString());
        form.put("day-0", visit.path("day").asString());
        form.put("at-0", visit.path("begins").asString());
        form.put("person-0-0", visit.path("going").get(0).path("person").asString());
        return form;
    }
}
