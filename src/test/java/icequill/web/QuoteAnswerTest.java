package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a customer says to a quote, noted on its pages. */
class QuoteAnswerTest {

    private static final String QUOTE = "/quotes/MQ-2026-00002";

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
    void acceptedPlan_becomesAnAgreement_whichItsPageTells() {
        assertThat(owner.get(QUOTE + "/accept").body()).contains("2,185.00 a year, before tax", "3,510.00");

        HttpResponse<String> answer = sent("accept", Map.of("plan", "quarterly", "name", "J. Baker", "title", "owner",
                "way", "in-person", "day", "20 May 2026", "purchaseOrder", "77", "start", "2027-06-01", "honored",
                "yes"));

        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).contains(QUOTE);
        assertThat(owner.get(QUOTE).body()).contains("Accepted May 20, 2026", "J. Baker, owner", "in person",
                "Plan: quarterly.", "It became agreement A-2026-008.").doesNotContain("The customer accepts</a>");
        assertThat(owner.json(QUOTE).path("quote").path("made").asString()).isEqualTo("A-2026-008");
    }

    /** The hotel's machines are under an agreement of the demo; nobody said who accepts, by which plan, or how. */
    @Test
    void whatIsWrong_standsAtItsField_withAllThatWasTyped() {
        HttpResponse<String> empty = sent("accept", Map.of("title", "owner"));
        assertThat(empty.statusCode()).isEqualTo(422);
        assertThat(empty.body()).contains("href=\"#name\"", "href=\"#way\"", "value=\"owner\"");

        HttpResponse<String> twice = sent("accept",
                Map.of("plan", "quarterly", "name", "J. Baker", "way", "mail", "day",
                        "2026-05-20"));
        assertThat(twice.statusCode()).isEqualTo(422);
        assertThat(twice.body()).contains("href=\"#start\"", "A-2026-002", "value=\"J. Baker\"");
        assertThat(owner.json(QUOTE).path("quote").path("state").asString()).isEqualTo("issued");
    }

    @Test
    void declinedQuote_saysWhy_andMayStillBeAccepted() {
        assertThat(sent("decline", Map.of()).body()).contains("href=\"#reason\"");

        assertThat(sent("decline", Map.of("reason", "price", "words", "An offer for 900.", "day", "2026-05-22"))
                .statusCode()).isEqualTo(303);

        assertThat(owner.get(QUOTE).body()).contains("Declined May 22, 2026: the price, “An offer for 900.”",
                "The customer accepts</a>").doesNotContain("The customer declines</a>");
        assertThat(owner.get("/quotes").body()).contains("<td>declined</td>");
    }

    private HttpResponse<String> sent(String what, Map<String, String> fields) {
        Map<String, String> form = new HashMap<>(fields);
        form.put("key", owner.key(QUOTE + "/" + what));
        return owner.post(QUOTE + "/" + what, form);
    }
}
