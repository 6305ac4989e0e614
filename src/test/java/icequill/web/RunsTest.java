package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Work that takes long: begun from a page, looked at until it ends, and stopped. */
@Tag("wide")
class RunsTest {

    private static final int MOST_LOOKS = 50_000;
    private static final String EDGE = "----edge";
    private static final String CUSTOMERS = """
            customer,name,street,city,region,postalCode,country
            mill-lane-deli,Mill Lane Deli,4 Mill Lane,Alderton,NY,10999,US
            """;

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @AfterEach
    void close() {
        office.close();
    }

    @BeforeEach
    void open() {
        office = OpenOffice.withVisits(folder, "late-call", "ten-minute-brushing");
        owner = office.owner();
    }

    /** The demo's visits: 301.13 is the late call with its taxes. */
    @Test
    void visitsThatAreDone_areBilledInOneGo_andNotTwice() {
        String page = owner.get("/today/issue").body();
        assertThat(page).contains("value=\"late-call\" checked", "value=\"ten-minute-brushing\" checked", "301.13");
        String key = owner.key("/today/issue");

        List<HttpResponse<String>> sent = Stream.of(1, 2).map(time -> owner.post("/today/issue",
                BodyPublishers.ofString("key=" + key + "&visit=late-call&visit=ten-minute-brushing"),
                Visitor.OWN_PAGE)).toList();

        assertThat(sent).allMatch(answer -> answer.statusCode() == 303);
        assertThat(sent.stream().map(RunsTest::where).distinct()).hasSize(1);
        JsonNode ended = ended(where(sent.getFirst()));
        assertThat(ended.path("state").asString()).as(ended.toString()).isEqualTo("done");
        assertThat(ended.at("/result/issued/papers")).hasSize(2);
        assertThat(owner.get(where(sent.getFirst())).body()).contains("2 of 2.", "2 invoices were issued", "301.13");
        assertThat(owner.get("/today/issue").body()).contains("Every visit that is done is billed.");
        assertThat(owner.json("/papers?kind=invoice&month=2026-12").path("papers")).hasSize(2);
    }

    @Test
    void whatCannotBeBilled_isTold_andTheRestIs() {
        owner.post("/visits/late-call/issue", Map.of("key", owner.key("/visits/late-call")));

        JsonNode ended = ended(where(owner.post("/today/issue", BodyPublishers.ofString("key="
                + owner.key("/today/issue") + "&visit=late-call&visit=ten-minute-brushing&visit=no-such"),
                Visitor.OWN_PAGE)));

        assertThat(ended.at("/result/issued/papers")).hasSize(1);
        assertThat(ended.at("/result/issued/problems").valueStream().map(problem -> problem.path("message").asString()))
                .anySatisfy(text -> assertThat(text).contains("\"late-call\" was billed"))
                .anySatisfy(text -> assertThat(text).contains("no-such")).hasSize(2);
    }

    /** By a price that was shown before a colleague changed the visit nothing is issued. */
    @Test
    void visitChangedSinceItsPriceWasShown_isNotBilled() {
        String page = owner.get("/today/issue").body();
        String version = page.replaceFirst("(?s).*name=\"version-late-call\" value=\"([0-9a-f]+)\".*", "$1");
        assertThat(page).contains(version);

        HttpResponse<String> answer = owner.post("/today/issue", Map.of("key", owner.key("/today/issue"), "visit",
                "late-call", "version-late-call", "0" + version));

        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("was changed by somebody else since this page was shown");
        assertThat(owner.json("/papers?kind=invoice&month=2026-12").path("papers")).isEmpty();
    }

    @Test
    void nothingTicked_isTold() {
        HttpResponse<String> answer = owner.post("/today/issue", Map.of("key", owner.key("/today/issue")));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("No visit is ticked");
    }

    @Test
    void book_isLookedAt_andFoundInOrder() throws IOException {
        owner.post("/visits/late-call/issue", Map.of("key", owner.key("/visits/late-call")));

        String run = where(owner.post("/shop/audit", Map.of("key", owner.key("/shop/audit"))));

        assertThat(ended(run).path("state").asString()).isEqualTo("done");
        assertThat(owner.get(run).body()).contains("All is in order: one paper.");
        Files.writeString(office.shop().resolve("papers/issued/INV-2026/INV-2026-00001.pdf"), "other");
        String again = where(owner.post("/shop/audit", Map.of("key", owner.key("/shop/audit"))));
        assertThat(ended(again).at("/result/audit/findings")).isNotEmpty();
        assertThat(owner.get(again).body()).contains("INV-2026-00001").doesNotContain("All is in order");
    }

    @Test
    void lists_areLookedAtFirst_thenTakenIn() {
        String trial = where(handed("customers.csv", CUSTOMERS));

        assertThat(ended(trial).path("state").asString()).as(ended(trial).toString()).isEqualTo("done");
        assertThat(owner.get(trial).body()).contains("Take in one form",
                "<th scope=\"row\">Customers</th><td class=\"number\">1</td>");
        assertThat(owner.json("/sites").toString()).doesNotContain("mill-lane-deli");
        String taken = where(
                owner.post("/shop/import/" + trial.replace("/runs/", ""), Map.of("key", owner.key(trial))));
        assertThat(ended(taken).path("state").asString()).as(ended(taken).toString()).isEqualTo("done");
        String same = where(handed("customers.csv", CUSTOMERS));
        assertThat(ended(same).at("/result/taken/forms/0/state").asString()).isEqualTo("same");
    }

    /** A name with a way out of its folder, and whatever a shell or a page would take for more, is a name. */
    @Test
    void problems_areToldByTheFileOfTheSender_whoseNameLeadsNowhere() {
        String run = where(handed("../../<b>$(x)..customers.csv", CUSTOMERS.replace("Alderton", "")));

        JsonNode ended = ended(run);
        assertThat(ended.path("state").asString()).isEqualTo("failed");
        assertThat(ended.at("/problems/0/file").asString() + ended).contains("customers.csv").doesNotContain("/tmp",
                "<b>");
        assertThat(owner.get(run).body()).doesNotContain("<b>");
        assertThat(handed("notes.txt", "x").statusCode()).isEqualTo(303);
        assertThat(owner.post("/shop/import", Map.of("key", owner.key("/shop/import"))).statusCode()).isEqualTo(422);
    }

    /** A shop with some thousand customers to take in takes seconds; none of them is there after it was stopped. */
    @Test
    void stoppedWork_takesNothingIn() {
        String many = CUSTOMERS + Stream.iterate(1, i -> i + 1).limit(3_000)
                .map(i -> "c" + i + ",Customer " + i + "," + i + " Mill Lane,Alderton,NY,10999,US\n")
                .collect(Collectors.joining());
        String trial = where(handed("customers.csv", many));

        String key = owner.key("/shop/audit");
        owner.post(trial, Map.of("key", key));

        assertThat(ended(trial).path("state").asString()).isEqualTo("stopped");
        assertThat(owner.get(trial).body()).contains("Stopped.").doesNotContain("Take in");
    }

    @Test
    void workOfAnOfficeThatWasClosed_isNotKnown() {
        HttpResponse<String> answer = owner.get("/runs/no-such");

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("This work is not known any more");
    }

    private static String where(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow();
    }

    /** How it is once it ends: looked at again and again, as a page does. */
    private JsonNode ended(String run) {
        for (int look = 0; look < MOST_LOOKS; look++) {
            JsonNode now = owner.json(run);
            if (List.of("done", "failed", "stopped").contains(now.path("state").asString())) {
                return now;
            }
        }
        throw new AssertionError("it does not end: " + owner.json(run));
    }

    private HttpResponse<String> handed(String name, String content) {
        String body = part("key", owner.key("/shop/import")) + "--" + EDGE
                + "\r\nContent-Disposition: form-data; name=\"files\"; filename=\"" + name
                + "\"\r\nContent-Type: text/csv\r\n\r\n" + content + "\r\n--" + EDGE + "--\r\n";
        return owner.post("/shop/import", BodyPublishers.ofString(body), "multipart/form-data; boundary=" + EDGE);
    }

    private static String part(String name, String value) {
        return "--" + EDGE + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n";
    }
}
