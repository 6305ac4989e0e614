package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.Main;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty page to an invoice, given back and issued anew. The amounts are worked out by hand from the shop's prices. */
@Tag("wide")
class EnteredVisitTest {

    private static final Pattern NAMES = Pattern.compile("<(?:input|textarea|select)[^>]* name=\"([^\"]+)\"");
    private static final String PAGE = "/sites/hotel-fernhill/visit";

    @TempDir
    Path folder;

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

    private Map<String, String> typed() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("day", "2026-05-20");
        fields.put("person0name", "Ada Quill");
        fields.put("person0grade", "lead");
        fields.put("person0from", "4:20 pm");
        fields.put("person0to", "18:05");
        fields.put("person0on", "repair");
        fields.put("machine", "lobby-bar");
        fields.put("complaint-lobby-bar", "<b>\"No\" ice</b>");
        fields.put("purchaseOrder", "FH-1");
        return fields;
    }

    private HttpResponse<String> sent(Map<String, String> fields) {
        fields.put("key", owner.key(PAGE));
        return owner.post(PAGE, fields);
    }

    /** The number on a part's bag stands beside its name, where letters find it. */
    @Test
    void part_hasItsNumberBesideItsName() throws IOException {
        Path materials = office.shop().resolve("pricing/materials.yaml");
        Files.writeString(materials, Files.readString(materials).replace("  - id: water-filter\n",
                "  - id: water-filter\n    partNumber: QF-4410\n"));

        assertThat(owner.get(PAGE).body())
                .contains("<option value=\"water-filter\">Water filter cartridge, QF-4410</option>");
    }

    /** Asked the day after everybody left, and then at no time at all: both are told at the time, not at who asked. */
    @Test
    void callAfterTheVisit_isToldAtItsTime() {
        Map<String, String> fields = typed();
        fields.putAll(Map.of("askedBy", "Bram", "symptom", "No ice.", "askedDay", "May 21, 2026", "askedAt", "9:00"));

        assertThat(sent(fields).body()).contains("id=\"error-askedAt-0\"").doesNotContain("id=\"error-askedBy-0\"");

        fields.remove("askedAt");
        fields.remove("askedDay");
        assertThat(sent(fields).body()).contains("id=\"error-askedAt-0\"").doesNotContain("id=\"error-askedBy-0\"");
    }

    /** Thirteen came, each for the hour from nine: none of them is left out. */
    @Test
    void everyRow_isStored_howeverManyThereAre() {
        Map<String, String> fields = typed();
        for (int i = 0; i < 13; i++) {
            fields.putAll(Map.of("person" + i + "name", "Person " + i, "person" + i + "grade", "helper",
                    "person" + i + "from", "9:00", "person" + i + "to", "10:00", "person" + i + "on", "repair"));
        }

        HttpResponse<String> stored = sent(fields);

        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        assertThat(owner.json(stored.headers().firstValue("Location").orElseThrow()).toString()).contains("Person 0",
                "Person 11", "Person 12");
    }

    /** Every field takes it, first as it is typed, then stored, on the pages that show it and as it is changed again. */
    @Test
    void markup_inEveryField_staysText() {
        String evil = "\"'><script>alert(1)</script><img src=x onerror=alert(1)>";
        Map<String, String> broken = typed();
        NAMES.matcher(owner.get(PAGE).body()).results().map(found -> found.group(1))
                .filter(name -> !name.equals("key") && !name.equals("machine"))
                .forEach(name -> broken.put(name, evil));
        Map<String, String> stored = typed();
        List.of("complaint-lobby-bar", "cause-lobby-bar", "correction-lobby-bar", "symptom", "askedBy", "approver",
                "purchaseOrder").forEach(name -> stored.put(name, evil));
        stored.putAll(Map.of("limit", "900", "askedDay", "2026-05-20", "askedAt", "9:00"));
        stored.put("person0name", "Ada " + evil);

        assertThat(broken.size()).isGreaterThan(20);
        assertThat(owner.post(PAGE + "/price", broken).body()).doesNotContain("<script>alert", "<img ", "\"'>");
        HttpResponse<String> answer = sent(stored);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        String visit = answer.headers().firstValue("Location").orElseThrow();
        for (String path : List.of(visit, visit + "/change", visit + "/withdraw", "/visits", "/today", "/today/issue",
                "/sites/hotel-fernhill", "/earnings")) {
            assertThat(owner.get(path).body()).as(path).doesNotContain("<script>alert", "<img ", "\"'>");
        }
        assertThat(owner.get(visit).body()).contains("&lt;script&gt;");
    }

    @Test
    void routeAndDiagnosis_areTyped_andKept() {
        Map<String, String> fields = typed();
        fields.put("diagnosis", "late-cal");
        HttpResponse<String> wrong = sent(fields);
        fields.remove("diagnosis");
        fields.put("route", "oak-run");
        HttpResponse<String> stored = sent(fields);

        assertThat(wrong.body()).containsOnlyOnce("Repairs what this visit found</label>")
                .contains("There is no visit &quot;late-cal&quot;", "id=\"diagnosis\"");
        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        assertThat(owner.get(stored.headers().firstValue("Location").orElseThrow() + "/change").body())
                .contains("name=\"route\"", "value=\"oak-run\"").doesNotContain("value=\"late-cal\"");
    }

    /** Wednesday: 52.00 + 40 min at 98.00/h 65.33 + 65 min at 147.00/h 159.25 = 276.58; at 8.875 % 24.55. */
    @Test
    void price_isShownWhileSomebodyTypes() {
        HttpResponse<String> page = owner.post(PAGE + "/price", typed());

        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("276.58", "USD\u00a0301.13", "&lt;b&gt;&quot;No&quot; ice&lt;/b&gt;")
                .doesNotContain("<b>");
        assertThat(owner.json("/visits?month=2026-05").path("visits").toString()).doesNotContain("hotel-fernhill");
    }

    @Test
    void visit_becomesInvoice_givenBackByLine_thenIssuedAnewIsRefused() {
        HttpResponse<String> stored = sent(typed());
        assertThat(stored.statusCode()).isEqualTo(303);
        String visit = stored.headers().firstValue("Location").orElseThrow();
        assertThat(visit).isEqualTo("/visits/hotel-fernhill-2026-05-20");
        String page = owner.get(visit).body();
        assertThat(page).contains("Issue the invoice, USD\u00a0301.13").doesNotContain("<b>");

        HttpResponse<String> issued = owner.post(visit + "/issue", Map.of("key", owner.key(visit)));
        String invoice = issued.headers().firstValue("Location").orElseThrow();
        assertThat(owner.json(invoice).path("issued").path("gross").asString()).isEqualTo("301.13");

        // 159.25 at 8.875 % is 14.13: 173.38.
        String asked = invoice + "/credit?line=3&reason=We%20came%20late.";
        assertThat(owner.get(asked).body()).contains("Issue the credit note, USD\u00a0−173.38");
        Map<String, String> credit = new LinkedHashMap<>(Map.of("line", "3", "reason", "We came late."));
        credit.put("key", owner.key(asked));
        credit.put("credits", "0");
        String note = owner.post(invoice + "/credit", credit).headers().firstValue("Location").orElseThrow();
        assertThat(owner.json(note).path("issued").path("gross").asString()).isEqualTo("-173.38");

        assertThat(owner.get(invoice + "/reissue?purchaseOrder=FH-2&due=keep&reason=Wrong%20order.").body())
                .contains("was given back already");
    }

    @Test
    void invoice_withTheWrongOrder_isIssuedAnew() {
        String visit = sent(typed()).headers().firstValue("Location").orElseThrow();
        String invoice = owner.post(visit + "/issue", Map.of("key", owner.key(visit))).headers()
                .firstValue("Location").orElseThrow();
        String asked = invoice + "/reissue?purchaseOrder=FH-2&due=keep&reason=Wrong%20order.";
        Map<String, String> again = new LinkedHashMap<>(
                Map.of("purchaseOrder", "FH-2", "due", "keep", "reason", "Wrong order."));
        again.put("key", owner.key(asked));
        again.put("credits", "0");

        String other = owner.post(invoice + "/reissue", again).headers().firstValue("Location").orElseThrow();

        assertThat(other).isNotEqualTo(invoice);
        assertThat(owner.json(other).path("matter").path("purchaseOrder").asString()).isEqualTo("FH-2");
        assertThat(owner.json(other).path("issued").path("replaces").asString()).isEqualTo(invoice.substring(8));
    }

    @Test
    void problems_standAtTheirFields_andNothingTypedIsLost() {
        Map<String, String> fields = typed();
        fields.put("person0to", "nonsense");
        fields.put("limit", "1,200");
        fields.put("line0part", "unobtainium");

        HttpResponse<String> page = sent(fields);

        assertThat(page.body()).contains("href=\"#person0to\"", "href=\"#limit\"", "id=\"error-person0to-0\"",
                "value=\"nonsense\"", "value=\"1,200\"", "value=\"unobtainium\"", "aria-invalid=\"true\"");
        fields.put("person0to", "18:05");
        fields.put("limit", "1200");
        assertThat(sent(fields).body()).contains("href=\"#line0part\"", "unobtainium");
        fields.remove("line0part");
        assertThat(sent(fields).statusCode()).isEqualTo(303);
    }

    /** What a second window, or the page before, still shows is not done once more. */
    @Test
    void credit_ofAPageThatIsOutOfDate_isNotGivenAgain() {
        String visit = sent(typed()).headers().firstValue("Location").orElseThrow();
        String invoice = owner.post(visit + "/issue", Map.of("key", owner.key(visit))).headers()
                .firstValue("Location").orElseThrow();
        String asked = invoice + "/credit?line=1&amount=10&reason=Late.";
        Map<String, String> credit = new LinkedHashMap<>(
                Map.of("line", "1", "amount", "10", "reason", "Late.", "credits", "0"));
        credit.put("key", owner.key(asked));
        assertThat(owner.post(invoice + "/credit", credit).statusCode()).isEqualTo(303);
        credit.put("key", owner.key(asked));

        HttpResponse<String> again = owner.post(invoice + "/credit", credit);

        assertThat(again.statusCode()).isNotEqualTo(303);
        assertThat(again.body()).contains("this page was shown", "Given back of it already", "CN-2026-00001");
        assertThat(owner.json(invoice).path("credits")).hasSize(1);
    }

    @Test
    void rowsWithoutTheirFirstField_areTold() {
        Map<String, String> fields = typed();
        fields.put("person1from", "9:00");
        fields.put("line0amount", "3");
        fields.put("own0price", "450.00");

        assertThat(sent(fields).body()).contains("href=\"#person1name\"", "href=\"#line0part\"",
                "href=\"#own0text\"");
    }

    @Test
    void minutesSoldAhead_areTypedBesideTheirPrice() {
        Map<String, String> fields = typed();
        fields.putAll(Map.of("own0text", "Ten hours ahead", "own0class", "repair", "own0price", "900", "own0ahead",
                "600"));
        String visit = sent(fields).headers().firstValue("Location").orElseThrow();

        assertThat(owner.get(visit + "/change").body()).containsPattern("name=\"own0ahead\"[^>]*value=\"600\"");
        fields.put("own0class", "parts");
        assertThat(sent(fields).body()).contains("href=\"#own0");
    }

    @Test
    void hoursThatRunBackward_areNoNight() {
        for (String[] hours : new String[][]{{"9:00", "9:00"}, {"11:00", "8:30"}}) {
            Map<String, String> fields = typed();
            fields.put("person0from", hours[0]);
            fields.put("person0to", hours[1]);

            assertThat(sent(fields).body()).contains("href=\"#person0to\"", "is not after");
        }
    }

    @Test
    void visit_pastMidnight_endsOnTheNextDay() {
        Map<String, String> fields = typed();
        fields.put("person0from", "22:40");
        fields.put("person0to", "0:55");

        String visit = sent(fields).headers().firstValue("Location").orElseThrow();

        assertThat(owner.json(visit).path("visit").path("ended").asString()).startsWith("2026-05-21T00:55");
    }

    private static String draft(String page) {
        Matcher id = Pattern.compile("name=\"draft\" value=\"([^\"]+)\"").matcher(page);
        assertThat(id.find()).isTrue();
        return id.group(1);
    }

    /** The office is closed in the middle, as when the machine is lost: what was typed last is there. */
    @Test
    void draft_survivesTheOffice_andIsGoneOnceItIsStored() {
        String page = owner.get(PAGE).body();
        Map<String, String> fields = typed();
        fields.put("draft", draft(page));
        fields.put("key", owner.key(PAGE));
        assertThat(owner.post(PAGE + "/draft", fields).headers().firstValue("Location"))
                .contains(PAGE + "?draft=" + draft(page));
        fields.put("complaint-lobby-bar", "Only hums.");
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);
        office.close();
        office = OpenOffice.of(office.shop());
        owner = office.owner();

        assertThat(owner.get(PAGE).body()).contains("Begun, and not stored", PAGE + "?draft=" + fields.get("draft"));
        assertThat(owner.get("/visits").body()).contains(PAGE + "?draft=" + fields.get("draft"));
        String again = owner.get(PAGE + "?draft=" + fields.get("draft")).body();
        assertThat(again).contains("Only hums.", "value=\"4:20 pm\"", "301.13", "Kept as a draft")
                .doesNotContain("Begun, and not stored");

        assertThat(sent(fields).statusCode()).isEqualTo(303);
        assertThat(owner.get(PAGE).body()).doesNotContain("Begun, and not stored");
        assertThat(owner.get(PAGE + "?draft=" + fields.get("draft")).body()).doesNotContain("Only hums.");
    }

    /** What a browser keeps late, of a page whose form was stored, is not begun anew. */
    @Test
    void draft_keptAfterItsFormWasSent_isNotThere() {
        Map<String, String> fields = typed();
        fields.put("draft", draft(owner.get(PAGE).body()));
        assertThat(sent(fields).statusCode()).isEqualTo(303);

        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);

        assertThat(owner.get("/visits").body()).doesNotContain("Begun, and not stored");
    }

    @Test
    void draft_isThrownAway_andKeptOfNoOtherSession() {
        Map<String, String> fields = typed();
        fields.put("draft", draft(owner.get(PAGE).body()));
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(403);
        fields.put("key", owner.key(PAGE));
        assertThat(office.owner().post(PAGE + "/draft", fields).statusCode()).isEqualTo(403);
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);
        String discard = "/drafts/" + fields.get("draft") + "/discard";

        HttpResponse<String> gone = owner.post(discard, Map.of("key", owner.key(PAGE)));

        assertThat(gone.headers().firstValue("Location")).contains(PAGE);
        assertThat(owner.get(PAGE).body()).doesNotContain("Begun, and not stored");
        fields.put("draft", "../../x");
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(422);
    }

    /** Two windows on one draft: one visit, and the second is led to it. */
    @Test
    void draft_storedInTwoWindows_isOneVisit() {
        Map<String, String> first = typed();
        first.put("draft", draft(owner.get(PAGE).body()));
        Map<String, String> second = new LinkedHashMap<>(first);
        second.put("complaint-lobby-bar", "Hums.");
        String visit = sent(first).headers().firstValue("Location").orElseThrow();

        HttpResponse<String> again = sent(second);

        assertThat(again.headers().firstValue("Location")).contains(visit + "?again=yes");
        assertThat(owner.get(visit + "?again=yes").body()).contains("Nothing was made a second time")
                .doesNotContain("Hums.");
        assertThat(owner.json("/visits?site=hotel-fernhill&month=2026-05").path("visits").size()).isEqualTo(1);
        second.put("key", owner.key(PAGE));
        HttpResponse<String> late = owner.post(PAGE + "/draft", second);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body())
                .contains("This draft became &quot;" + visit.replaceFirst(".*/", "") + "&quot; meanwhile",
                        "Hums.")
                .doesNotContain(second.get("draft"));
        assertThat(owner.get("/visits").body()).doesNotContain("Begun, and not stored");
    }

    /** The window that was left open says that it was thrown away, and keeps what stands in it as a new one. */
    @Test
    void draft_thrownAwayElsewhere_comesBackOnlyAsANewOne() {
        Map<String, String> fields = typed();
        fields.put("draft", draft(owner.get(PAGE).body()));
        fields.put("key", owner.key(PAGE));
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);
        owner.post("/drafts/" + fields.get("draft") + "/discard", Map.of("key", owner.key(PAGE)));

        HttpResponse<String> late = owner.post(PAGE + "/draft", fields);

        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("This draft was thrown away meanwhile", "value=\"4:20 pm\"")
                .doesNotContain("value=\"" + fields.get("draft") + "\"");
        assertThat(owner.get("/visits").body()).doesNotContain("Begun, and not stored");
        HttpResponse<String> stored = sent(new LinkedHashMap<>(fields));
        assertThat(stored.statusCode()).isEqualTo(409);
        assertThat(owner.json("/visits?site=hotel-fernhill&month=2026-05").path("visits").size()).isZero();

        fields.put("draft", draft(stored.body()));
        fields.put("key", owner.key(PAGE));
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);
        assertThat(owner.get("/visits").body()).contains("Begun, and not stored");
        assertThat(sent(fields).statusCode()).isEqualTo(303);
    }

    /** Nothing personal comes back from a window that was left open, whether it was kept before or not. */
    @Test
    void draft_ofAForgottenCustomer_isNotKeptAndNotStored() {
        Map<String, String> fields = typed();
        fields.put("draft", draft(owner.get(PAGE).body()));
        fields.put("key", owner.key(PAGE));
        Map<String, String> other = new LinkedHashMap<>(fields);
        other.put("draft", draft(owner.get(PAGE).body()));
        assertThat(owner.post(PAGE + "/draft", fields).statusCode()).isEqualTo(303);
        assertThat(Main.commands(OpenOffice.CLOCK).execute("customer", "forget",
                owner.json("/sites/hotel-fernhill").path("card").path("customer").asString(), "--yes", "--shop",
                office.shop().toString())).isZero();

        for (Map<String, String> window : List.of(fields, other)) {
            for (String path : List.of(PAGE + "/draft", PAGE)) {
                HttpResponse<String> late = owner.post(path, window);
                assertThat(late.statusCode()).as(path).isEqualTo(409);
                assertThat(late.body()).contains("The customer was forgotten").doesNotContain("4:20 pm");
            }
        }
    }

    @Test
    void draftOfACorrection_isOfferedThereOnly_andStillSeesWhatOthersChanged() {
        String path = "/visits/late-call/change";
        String page = owner.get(path).body();
        Map<String, String> fields = typed();
        fields.remove("machine");
        fields.put("draft", draft(page));
        fields.put("key", owner.key(path));
        fields.put("version", page.replaceFirst("(?s).*name=\"version\" value=\"([^\"]+)\".*", "$1"));
        assertThat(owner.post(path + "/draft", fields).headers().firstValue("Location"))
                .contains(path + "?draft=" + fields.get("draft"));
        assertThat(owner.get(path).body()).contains("Go on with late-call");
        assertThat(owner.get(PAGE).body()).doesNotContain("Go on with");
        Map<String, String> other = new LinkedHashMap<>(fields);
        other.put("purchaseOrder", "FH-77");
        other.put("draft", draft(owner.get(path).body()));
        other.put("key", owner.key(path));
        assertThat(owner.post(path, other).statusCode()).isEqualTo(303);

        assertThat(owner.get(path + "?draft=" + fields.get("draft")).body()).contains("value=\"FH-1\"");
        fields.put("key", owner.key(path));
        assertThat(owner.post(path, fields).statusCode()).isEqualTo(409);
    }

    /** 276.58 before tax, above the limit: no invoice, until somebody allowed more, whose name is kept. */
    @Test
    void visitAboveItsLimit_isBilledOnceSomebodyAllowedMore() {
        Map<String, String> fields = typed();
        fields.put("limit", "200");
        assertThat(Main.commands(OpenOffice.CLOCK).execute("contact", "add", "Imre Castell", "--site", "hotel-fernhill",
                "--for", "approvals", "--telephone", "607-555-0188", "--shop", office.shop().toString())).isZero();
        String visit = sent(fields).headers().firstValue("Location").orElseThrow();
        assertThat(owner.get(visit).body()).contains("above the limit of 200.00", "Who may approve more: Imre Castell",
                "607-555-0188", "The customer allows more");
        Map<String, String> issue = Map.of("key", owner.key(visit));
        HttpResponse<String> above = owner.post(visit + "/issue", issue);
        assertThat(above.statusCode()).isEqualTo(422);
        assertThat(above.body()).contains("above the limit of 200.00", "name=\"approver\"");

        Map<String, String> more = new LinkedHashMap<>(Map.of("key", owner.key(visit), "limit", "300"));
        more.put("version", owner.get(visit).body().replaceFirst("(?s).*name=\"version\" value=\"([^\"]+)\".*", "$1"));
        HttpResponse<String> nobody = owner.post(visit + "/approve", more);
        assertThat(nobody.statusCode()).isEqualTo(422);
        assertThat(nobody.body()).contains("href=\"#approver\"", "value=\"300\"");
        more.put("approver", "Imre Castell, May 20, 17:10, by telephone");
        more.put("key", owner.key(visit));
        assertThat(owner.post(visit + "/approve", more).statusCode()).isEqualTo(303);

        assertThat(owner.get(visit).body()).contains("Imre Castell, May 20, 17:10, by telephone")
                .doesNotContain("above the limit");
        assertThat(owner.post(visit + "/issue", Map.of("key", owner.key(visit))).headers().firstValue("Location"))
                .contains("/papers/INV-2026-00001");
    }

    @Test
    void invoice_isSeenAsADraft_andNothingIsStored() {
        HttpResponse<String> draft = owner.post(PAGE + "/paper", typed());
        assertThat(draft.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(draft.body()).startsWith("%PDF-");

        Map<String, String> wrong = typed();
        wrong.put("person0to", "nonsense");
        assertThat(owner.post(PAGE + "/paper", wrong).body()).contains("href=\"#person0to\"", "There is no price yet");
        assertThat(owner.get(PAGE + "/paper").headers().firstValue("Location")).contains(PAGE);
        assertThat(owner.json("/visits?month=May%202026").path("visits").toString()).doesNotContain("hotel-fernhill");
    }

    /** The schema allows a note 2,000 letters; none of them is left out without a word. */
    @Test
    void symptomThatIsTooLong_isTold_andStaysAsItWasTyped() {
        Map<String, String> fields = typed();
        fields.put("askedBy", "Noor Haddad");
        fields.put("askedDay", "2026-05-19");
        fields.put("askedAt", "4 pm");
        fields.put("symptom", "Hums. ".repeat(4000) + "The end.");

        HttpResponse<String> page = sent(fields);

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("href=\"#symptom\"", "2000", "The end.");
        fields.put("symptom", "Hums.");
        String visit = sent(fields).headers().firstValue("Location").orElseThrow();
        assertThat(owner.json(visit).path("visit").path("call").path("at").asString()).startsWith("2026-05-19T16:00");
    }

    /** A reason of 1,900 letters with accents is 11,000 in an address; one that nobody prints is told. */
    @Test
    void creditWithALongReason_isShownBeforeItIsGiven() {
        String visit = sent(typed()).headers().firstValue("Location").orElseThrow();
        String invoice = owner.post(visit + "/issue", Map.of("key", owner.key(visit))).headers()
                .firstValue("Location").orElseThrow();

        HttpResponse<String> look = owner.post(invoice + "/credit/look",
                Map.of("line", "3", "reason", "\u00f1\u00f1\u00f1\u00f1 ".repeat(380)));

        assertThat(look.statusCode()).isEqualTo(200);
        assertThat(look.body()).contains("\u2212173.38");
        assertThat(owner.get(invoice + "/credit").body())
                .contains("method=\"post\" action=\"" + invoice + "/credit/look");
        for (String correction : List.of("/credit", "/reissue")) {
            assertThat(owner.post(invoice + correction + "/look", Map.of("line", "3", "reason", "x".repeat(2001)))
                    .body()).contains("href=\"#reason\"", "at most 2000").doesNotContain("name=\"credits\"");
        }
    }
}
