package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Pages on what is charged, in a shop with a visit on record and prices of its own for one site. */
class RatesPagesTest {

    private static final String SHEET = """
            format: 1
            kind: rate-sheet
            effective: {from: 2026-01-01}
            id: harbor
            name: {en: Harbor agreement, es: acuerdo del puerto}
            for: {sites: [hotel-fernhill]}
            labor:
              - {grade: lead, hourly: {standard: 90.00}}   # signed in March
            """;

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() throws IOException {
        office = OpenOffice.withVisits(folder, "ten-minute-brushing");
        Files.writeString(office.shop().resolve("pricing/harbor.yaml"), SHEET);
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void siteWithASheet_hasItsPricesAndAllOthersOfTheShop() {
        JsonNode lead = labor("/rates?on=2026-06-01&site=hotel-fernhill");

        assertThat(lead.path("amount").asString()).isEqualTo("90.00");
        assertThat(lead.path("agreed").asString()).isEqualTo("Harbor agreement");
        assertThat(labor("/rates?on=2026-06-01").path("amount").asString()).isEqualTo("98.00");
        assertThat(owner.get("/rates?site=hotel-fernhill").body()).contains("agreed: Harbor agreement", "90.00");
        assertThat(owner.get("/rates").body()).doesNotContain("Harbor");
    }

    private JsonNode labor(String path) {
        return owner.json(path).path("prices").valueStream()
                .filter(price -> price.path("group").asString().equals("labor")).findFirst().orElseThrow();
    }

    /** What comes from the shop's costs is the owner's alone: 1.37 a floz of descaler, 46.50 an hour. */
    @Test
    void costs_areNotTold() {
        assertThat(owner.get("/rates").body()).contains("1.8495").doesNotContain("1.37<", "46.50", "0.725");
    }

    @Test
    void priceAsShipped_isMarkedSo() throws IOException {
        Path labor = office.shop().resolve("pricing/labor.yaml");
        Files.writeString(labor, Files.readString(labor).replaceFirst("(hourly: .*)# invented for the demo",
                "$1# as shipped, put in your own and take this away"));

        assertThat(owner.get("/rates").body()).contains("3 prices are still as they came with the program",
                "<strong>still as it came with the program</strong>");
    }

    /** 4 % on 98.00 is 101.92, to half a dollar 102.00; on 147.00 it is 152.88, so 153.00; on 196.00 it is 203.84, so 204.00. */
    @Test
    void raise_showsEachPrice_writesOnce_andIsTriedAndAdopted() throws IOException {
        String asked = "from=2027-01-01&percent-labor=4&step-labor=0.50";
        assertThat(owner.get("/rates/raise?" + asked).body()).contains(">102.00<", ">153.00<", ">204.00<",
                "Write the prices of January 1, 2027");
        Map<String, String> form = Map.of("key", owner.key("/rates/raise?" + asked), "from", "2027-01-01",
                "percent-labor", "4", "step-labor", "0.50");

        List<HttpResponse<String>> answers = List.of(owner.post("/rates/raise", form),
                owner.post("/rates/raise", form));

        assertThat(answers).allMatch(answer -> answer.statusCode() == 303
                && answer.headers().firstValue("Location").orElseThrow().equals("/rates?on=2027-01-01"));
        assertThat(Files.readString(office.shop().resolve("pricing/labor-2027-01-01.yaml")))
                .contains("standard: 102.00");
        assertThat(labor("/rates?on=2026-12-31").path("amount").asString()).isEqualTo("98.00");
        assertThat(labor("/rates?on=2027-01-01").path("amount").asString()).isEqualTo("102.00");
        assertThat(labor("/rates?on=2027-01-01").path("file").asString()).isEqualTo("pricing/labor-2027-01-01.yaml");
        // Ten minutes are billed as an hour: 4.00 more of 150.00.
        assertThat(owner.get("/rates/try?on=2027-01-01").body()).contains("One visit", ">4.00<", ">150.00<",
                ">154.00<");
        adopt();
    }

    private void adopt() {
        HttpResponse<String> page = owner.get("/rates/adopt");
        String version = page.body().replaceFirst("(?s).*name=\"version\" value=\"([0-9a-f]+)\".*", "$1");

        HttpResponse<String> done = owner.post("/rates/adopt",
                Map.of("key", owner.key("/rates/adopt"), "version", version));

        assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
        assertThat(owner.get("/rates/versions").body()).contains("Version " + version + " is in force.");
        assertThat(owner.get("/rates/adopt").body())
                .contains("Version " + version + " is in force; our files are as it is.");
    }

    @Test
    void filesChangedSinceThePageWasShown_areNotAdopted() throws IOException {
        String key = owner.key("/rates/adopt");
        Files.writeString(office.shop().resolve("pricing/harbor.yaml"), SHEET.replace("90.00", "91.00"));

        HttpResponse<String> refused = owner.post("/rates/adopt", Map.of("key", key, "version", "0123456789abcdef"));

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("changed since this page was shown");
        assertThat(owner.json("/rates/versions").path("all").path("versions")).isEmpty();
    }

    @Test
    void wrongInput_isToldAtOnce_andStays() {
        HttpResponse<String> answer = owner.get("/rates/raise?from=someday&percent-labor=x&step-labor=1.234");

        assertThat(answer.body()).contains("There is no day &quot;someday&quot;", "&quot;x&quot; is no number",
                "&quot;1.234&quot; can be read as thousands or as decimals", "value=\"someday\"");
        assertThat(owner.get("/rates/raise?from=2026-01-02&percent-filters=3").body())
                .contains("is past: visits since");
        assertThat(owner.get("/rates/raise?from=2027-01-01").body()).contains("No percentage was typed");
        assertThat(owner.get("/rates/raise?from=2027-01-01&percent-labor=900").body()).contains("-50 to 100");
        assertThat(owner.get("/rates?site=no-such").body()).contains("no-such");
    }
}
