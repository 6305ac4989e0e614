package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A call that two people take a step further. */
class OvertakenCallTest {

    private static final String CALL = "/calls/crumb-lane-bakery-2026-12-30";

    /** Both see the call as it was taken; whoever is second is told so, and nothing of his is stored. */
    @Test
    void stepThatSomebodyOvertook_isRefused(@TempDir Path folder) throws IOException {
        try (OpenOffice office = OpenOffice.of(FinishedDemo.copy(folder.resolve("shop")))) {
            Visitor owner = office.owner();
            String take = "/calls/new?site=crumb-lane-bakery";
            assertThat(
                    owner.post("/calls/new", Map.of("key", owner.key(take), "site", "crumb-lane-bakery", "by", "Noor",
                            "symptom", "No ice.")).headers().firstValue("Location"))
                    .contains(CALL);
            String first = owner.key(CALL);
            String second = owner.key(CALL);

            assertThat(
                    owner.post(CALL + "/plan", Map.of("key", first, "seen", "1", "person", "Ada", "planTime", "13:00"))
                            .statusCode())
                    .isEqualTo(303);
            HttpResponse<String> late = owner.post(CALL + "/withdraw",
                    Map.of("key", second, "seen", "1", "reason", "It runs again."));

            assertThat(late.statusCode()).isEqualTo(409);
            assertThat(late.body()).contains("was changed by somebody else since this page was shown",
                    "It runs again.");
            assertThat(owner.json(CALL).path("stage").asString()).isEqualTo("planned");
        }
    }
}
