package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What was added of refrigerant and recovered, typed into the page of a visit. */
class RefrigerantFieldsTest {

    private static final String PAGE = "/sites/pennon-wharf-taproom/visit";
    private static final String MACHINE = "back-bar";

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() {
        office = OpenOffice.withVisits(folder.resolve("shop"), "late-call");
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    /** A visit for diagnosis; fields of refrigerant by their names without what they begin and end with. */
    private HttpResponse<String> sent(Map<String, String> gas) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("day", "2026-05-20", "person0name", "Ada Quill",
                "person0grade", "lead", "person0from", "9:00", "person0to", "10:00", "person0on", "repair", "machine",
                MACHINE, "complaint-" + MACHINE, "Warm", "key", owner.key(PAGE)));
        gas.forEach((name, value) -> fields.put("gas" + name + "-" + MACHINE, value));
        return owner.post(PAGE, fields);
    }

    /** A quarter of a pound is 4 oz. */
    @Test
    void whatIsTyped_isStoredAndStandsThereToBeCorrected() {
        HttpResponse<String> stored = sent(Map.of("added", "0.25", "unit", "lb", "from", "V-17", "technician",
                "Ada Quill", "leak", "Flare nut", "when", "initial", "tight", "yes", "how", "nitrogen"));

        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        String visit = stored.headers().firstValue("Location").orElseThrow();
        JsonNode log = owner.json("/refrigerant");
        assertThat(log.path("cylinders").get(0).path("cylinder").asString()).isEqualTo("V-17");
        assertThat(log.path("cylinders").get(0).path("taken").asString()).isEqualTo("4");
        assertThat(owner.get(visit + "/change").body()).contains("value=\"0.25\"", "value=\"V-17\"",
                "value=\"nitrogen\"", "Flare nut</textarea>", "<option value=\"lb\" selected>");
    }

    @Test
    void whatCannotBe_isToldAtItsField_withAllThatWasTyped() {
        HttpResponse<String> wrong = sent(Map.of("added", "a lot", "kind", "R-404B", "technician", "Teo Lindqvist"));

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("href=\"#gasadded-" + MACHINE, "value=\"a lot\"", "value=\"R-404B\"");

        HttpResponse<String> nobody = sent(Map.of("added", "3", "kind", "R-404B"));
        assertThat(nobody.statusCode()).isEqualTo(422);
        assertThat(nobody.body()).contains("href=\"#gaskind-" + MACHINE, "href=\"#gastechnician-" + MACHINE,
                "There is no refrigerant in pricing/refrigerants.yaml &quot;R-404B&quot;",
                "Who added or recovered refrigerant is missing");
        assertThat(owner.json("/refrigerant").path("visits")).isEmpty();
    }

    /** A unit and a purpose are always chosen, and say nothing by themselves. */
    @Test
    void onlyWhatIsChosen_saysNothing() {
        HttpResponse<String> stored = sent(Map.of("unit", "oz", "purpose", "service", "tight", "no"));

        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        assertThat(owner.json("/refrigerant").path("visits")).isEmpty();
    }
}
