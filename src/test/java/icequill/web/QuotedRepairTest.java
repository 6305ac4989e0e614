package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A repair from what a visit recommended to its quote, without a form at a shell. */
class QuotedRepairTest {

    private static final String SITE = "/sites/hotel-fernhill";
    private static final String SWITCH = "New float switch";

    @TempDir
    private Path folder;

    /** By hand: service call 52.00, 75 minutes at 98.00/h 122.50, a float switch 64.00 by the demo's prices. */
    @Test
    void recommendedRepair_isQuoted_accepted_andItsVisitSettlesIt() {
        try (OpenOffice office = OpenOffice.withVisits(folder, "included-visit-hotel")) {
            Visitor owner = office.owner();
            String list = owner.get("/jobs/recommended").body();
            assertThat(list).contains(SWITCH, "declined on the visit");
            assertThat(owner.get(SITE).body()).contains(SWITCH);
            String asked = SITE + "/repair?visit=included-visit-hotel&machine=floor-6&recommended="
                    + SWITCH.replace(" ", "%20");
            assertThat(list).contains(asked.replace("&", "&amp;"));
            String page = owner.get(asked).body();
            assertThat(page).contains("<option value=\"included-visit-hotel " + SWITCH + "\" selected>");

            Map<String, String> fields = new LinkedHashMap<>(Map.of("machine", "floor-6", "found",
                    "included-visit-hotel " + SWITCH, "work", "We fit a new float switch.", "day", "2027-01-06",
                    "person0name",
                    "Ada Quill", "person0grade", "lead", "person0from", "9:00", "person0to", "10:15", "person0on",
                    "repair", "deposit", "thirty"));
            fields.put("line0part", "float-switch");
            fields.put("line0amount", "1");
            fields.put("stages", "40, 40, 20");
            String wrong = owner.post(SITE + "/repair/price", fields).body();
            assertThat(wrong).contains("href=\"#deposit\"").contains("thirty");
            fields.put("deposit", "30");
            fields.remove("stages");
            assertThat(owner.post(SITE + "/repair/price", fields).body()).contains("52.00", "122.50");

            fields.put("key", owner.key(asked));
            HttpResponse<String> issued = owner.post(SITE + "/repair", fields);
            assertThat(issued.statusCode()).as(issued.body()).isEqualTo(303);
            String quote = issued.headers().firstValue("Location").orElseThrow();
            assertThat(quote).isEqualTo("/quotes/RQ-2026-00001");
            assertThat(owner.post(SITE + "/repair", fields).headers().firstValue("Location")).contains(quote);
            JsonNode open = owner.json("/jobs/recommended").path("repairs");
            assertThat(open.get(1).path("state").asString()).isEqualTo("quoted");
            assertThat(open).hasSize(2);

            String visit = "/visits/" + open.get(1).path("planned").asString() + "/change";
            assertThat(owner.get(visit).body())
                    .contains("name=\"settled-floor-6\" value=\"included-visit-hotel " + SWITCH + "\" checked");
        }
    }
}
