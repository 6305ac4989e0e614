package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.cli.CommandsTest.Run;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** An agreement on its pages: how it stands, and how it is ended. */
@Tag("wide")
class AgreementPagesTest {

    private static final String BAKERY = "/agreements/A-2026-004";

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
    void endedAgreement_isShownFirst_andWhoComesLateIsToldSo() {
        assertThat(owner.get(BAKERY).body()).contains("In force.", "1,075.00 a year", "June 1, 2026");
        String look = owner.get(BAKERY + "/end?day=2026-12-01&way=mail&who=J.+Baker").body();
        assertThat(look).contains("would end on December 31, 2026");
        assertThat(owner.json(BAKERY).path("stage").asString()).isEqualTo("in-force");
        Map<String, String> form = Map.of("day", "2026-12-01", "way", "mail", "who", "J. Baker", "seen", "0");

        HttpResponse<String> done = sent("end", form);

        assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
        assertThat(done.headers().firstValue("Location")).contains(BAKERY);
        assertThat(owner.get(BAKERY).body()).contains("Notice given.", "The customer gave notice (mail, J. Baker)");
        assertThat(Stream.of("/transfer", "/change", "/end", "/refuse").map(page -> owner.get(BAKERY + page).body()))
                .allMatch(body -> body.contains("Nothing of it can be changed any more: notice given.")
                        && body.contains("Its last day is December 31, 2026.")
                        && !body.contains("method=\"post\" action=\"" + BAKERY)
                        && body.contains("href=\"/sites/crumb-lane-bakery/quote\""));
        assertThat(owner.get(BAKERY + "/order").body()).contains("action=\"" + BAKERY + "/order\"");
        HttpResponse<String> late = sent("refuse", form);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("was changed by somebody else since this page was shown");
    }

    /** What was sent by ordinary mail does not count by the rule of the place; with somebody's word it is renewed all the same. */
    @Test
    void renewal_tellsWhatCounts_andGoesOnAsAnother() {
        assertThat(sent("renewal", Map.of("what", "sent", "day", "2026-12-05", "way", "mail", "tracking", "9407 1",
                "seen", "0")).statusCode()).isEqualTo(303);
        assertThat(owner.get(BAKERY + "/renewal").body()).contains("9407 1", "does not count.",
                "does not know this way: mail.");
        assertThat(owner.get("/today/renewals").body()).contains("does not know this way: mail.");

        HttpResponse<String> early = sent("renewal", Map.of("what", "renew", "seen", "1"));
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(early.body()).contains("The customer may refuse until 2027-04-01.", "href=\"#agreed\"");
        HttpResponse<String> next = sent("renewal", Map.of("what", "renew", "agreed", "J. Baker", "seen", "1"));

        assertThat(next.headers().firstValue("Location")).contains("/agreements/A-2027-001");
        assertThat(owner.get("/agreements/A-2027-001").body()).contains("1,120.00 a year", "Begins later.");
        assertThat(owner.get(BAKERY).body()).contains("It goes on as A-2027-001, J. Baker");
    }

    /** The hotel's agreement of the demo looks after four machines, one of them since August; a fifth comes in on 1 October. */
    @Test
    void machineTicked_isShownFirst_andThenPartOfTheAgreement() {
        String hotel = "/agreements/A-2026-002";
        assertThat(owner.get(hotel + "/change").body()).contains("value=\"pool-bar\" checked",
                "value=\"main-kitchen\">");
        String fields = "?site=hotel-fernhill&day=2026-09-20&from=2026-10-01&who=J.+Baker"
                + "&machine=lobby-bar&machine=floor-3&machine=floor-6&machine=pool-bar";

        assertThat(owner.get(hotel + "/change" + fields + "&machine=main-kitchen").body()).contains("+ main kitchen",
                "200.20", "200.18");
        assertThat(owner.get(hotel + "/change" + fields).body()).contains("No machine comes in or goes out");
        assertThat(owner.get(hotel + "/change" + fields.replace("2026-10-01", "") + "&machine=main-kitchen").body())
                .contains("href=\"#from\"");
        changed(hotel, fields + "&machine=main-kitchen&seen=0");

        assertThat(owner.get(hotel).body()).contains("From October 1, 2026 it changes: + main kitchen, J. Baker.");
        assertThat(owner.json(hotel).path("sites").get(0).path("all").valueStream()
                .filter(machine -> machine.path("agreed").asBoolean())
                .map(machine -> machine.path("machine").asString()))
                .contains("main-kitchen");
    }

    /**
     * A fourth coffee room comes in on 1 February: 620.00 x 120 / 365 = 203.84, all in the last payment of 515.53. On 1 March the third goes out,
     * after 92 days less: 620.00 x 92 / 365 = 156.27 of its 206.38.
     */
    @Test
    void siteChosen_isShownFirst_andComesIn_andAnotherGoesOut() throws IOException {
        String rooms = "/agreements/A-2026-007";
        assertThat(owner.get(rooms + "/change").body()).contains("goes out as a whole").doesNotContain("id=\"site\"");
        pier();
        assertThat(owner.get(rooms + "/change?site=lantern-pier").body())
                .contains("<option value=\"lantern-pier\" selected>", "value=\"counter\" checked")
                .doesNotContain("goes out as a whole");
        String in = "?site=lantern-pier&machine=counter&day=2026-12-20&from=2027-02-01&who=J.+Baker";
        assertThat(owner.get(rooms + "/change" + in).body()).contains("+ <a href=\"/sites/lantern-pier\">", "203.84",
                "719.37", "Visits that are due there by it: no visits");
        assertThat(owner.get(rooms + "/change" + in.replace("2027-02-01", "2026-06-01")).body())
                .contains("href=\"#from\"");
        changed(rooms, in + "&seen=0");
        String out = "?site=lantern-ceniza&removeSite=yes&day=2026-12-20&from=2027-03-01";
        assertThat(owner.get(rooms + "/change" + out).body()).contains("– <a href=\"/sites/lantern-ceniza\">",
                "156.27", "563.10", "Visits that are not due there any more: no visits");
        changed(rooms, out + "&seen=1");

        assertThat(owner.get(rooms).body()).contains("Lantern Coffee Pier, from February 1, 2027",
                "Lantern Coffee Ceniza, from October 1, 2026, until February 28, 2027",
                "From February 1, 2027 it changes: + Lantern Coffee Pier (counter), J. Baker.");
        assertThat(owner.get(rooms + "/change?site=lantern-ceniza").body()).doesNotContain("goes out as a whole");
    }

    /** A coffee room like that at the depot, which no agreement is for. */
    private void pier() throws IOException {
        String depot = Files.readString(Path.of("src/main/resources/icequill/demo-forms/sites/lantern-depot.yaml"));
        Path form = Files.writeString(folder.resolve("pier.yaml"), depot
                .replaceFirst("(?s)customer:.*?(?=\nname:)", "id: lantern-pier\ncustomer: lantern-coffee-rooms")
                .replace("Lantern Coffee Depot", "Lantern Coffee Pier").replace("0302", "0304")
                .replace("QD-300-3021", "QD-300-3041"));
        Run run = Run.at(OpenOffice.CLOCK, "import", form.toString(), "--shop", folder.resolve("shop").toString());
        assertThat(run.status()).as(run.err()).isZero();
    }

    private void changed(String agreement, String fields) {
        HttpResponse<String> done = owner.post(agreement + "/change", BodyPublishers.ofString(fields.substring(1)
                + "&key=" + owner.key(BAKERY + "/order")), "application/x-www-form-urlencoded");
        assertThat(done.statusCode()).as(done.body()).isEqualTo(303);
    }

    @Test
    void purchaseOrder_standsFromADayOn() {
        assertThat(sent("order", Map.of("order", "CL-77", "from", "2026-06-01", "seen", "0")).statusCode())
                .isEqualTo(303);
        assertThat(owner.get(BAKERY).body()).contains("CL-77 stands from June 1, 2026 on.");
        HttpResponse<String> early = sent("order", Map.of("order", "CL-78", "from", "2026-05-01", "seen", "1"));
        assertThat(early.statusCode()).isEqualTo(422);
        assertThat(early.body()).contains("href=\"#from\"", "value=\"CL-78\"");
    }

    /** Of the demo's agreements the bakery's is found by its customer; it has one installment billed and the next visit is that of September. */
    @Test
    void list_findsAgreements_andSaysWhatIsNext() {
        assertThat(owner.get("/agreements").body()).contains("A-2026-002", "A-2026-004",
                "/agreements/A-2026-004/renewal");
        JsonNode found = owner.json("/agreements?find=crumb").path("agreements");
        assertThat(found).hasSize(1);
        assertThat(found.get(0).path("where").asString()).isEqualTo("Crumb Lane Bakery, Crumb Lane Bakery");
        assertThat(found.get(0).path("standing").path("stage").asString()).isEqualTo("in-force");
        assertThat(found.get(0).path("standing").path("visit").asString()).isEqualTo("2027-03-01");
        assertThat(found.get(0).path("standing").path("renewal").asString()).isEqualTo("wait");
    }

    @Test
    void whatIsWrong_standsAtItsField() {
        assertThat(owner.get(BAKERY + "/end?day=2026-12-01&way=mail&lastDay=2026-12-30").body())
                .contains("is too early for a notice of");
        HttpResponse<String> empty = sent("refuse", Map.of("way", "pigeon", "who", "J. Baker", "seen", "0"));
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(empty.body()).contains("href=\"#way\"", "value=\"J. Baker\"");
        assertThat(owner.get("/agreements/A-1").statusCode()).isEqualTo(404);
    }

    private HttpResponse<String> sent(String what, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("key", owner.key(BAKERY + "/order"));
        return owner.post(BAKERY + "/" + what, form);
    }
}
