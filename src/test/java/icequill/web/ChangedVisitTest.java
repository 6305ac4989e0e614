package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.cli.Main;
import icequill.office.register.ImportOffice;
import icequill.shop.ShopBook;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URLEncoder;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Visits of the book corrected, recorded as done, and withdrawn. The amounts are worked out by hand from the shop's prices. */
@Tag("wide")
class ChangedVisitTest {

    private static final Pattern INPUT = Pattern
            .compile("<input (?![^>]*type=\"checkbox\")[^>]*name=\"([^\"]+)\"[^>]*value=\"([^\"]*)\"");
    private static final Pattern BOX = Pattern
            .compile("<input type=\"checkbox\" name=\"([^\"]+)\" value=\"([^\"]+)\"[^>]* checked>");
    private static final Pattern AREA = Pattern.compile("<textarea [^>]*name=\"([^\"]+)\"[^>]*>([^<]*)</textarea>");
    private static final Pattern CHOICE = Pattern.compile("(?s)<select [^>]*name=\"([^\"]+)\"[^>]*>(.*?)</select>");
    private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\" selected>");

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Visitor owner;

    @BeforeAll
    static void open() {
        office = OpenOffice.withVisits(folder.resolve("shop"), "late-call", "ten-minute-brushing",
                "warranty-pump-bakery", "callback-taproom", "clock-change", "found-nobody-bakery", "goodwill-clinic",
                "holiday-call-mercado", "included-visit-hotel", "over-midnight-hotel", "packs-and-discount-mercado",
                "spring-cleaning-bakery", "two-leads-hotel", "valve-repair-taproom", "waiting-hotel");
        assertThat(ImportOffice.of(ShopBook.of(office.shop(), OpenOffice.CLOCK)).run(List.of(
                office.shop().resolve("planned/summer-cleaning-bakery.yaml"),
                office.shop().resolve("planned/autumn-condensers-hotel.yaml")), false).problems()).isEmpty();
        owner = office.owner();
    }

    @AfterAll
    static void close() {
        office.close();
    }

    /** What a browser would send of the page's form as it is. */
    private static List<String[]> form(String page) {
        String body = page.substring(page.indexOf("<form method=\"post\" action=\"/visits/"));
        String form = body.substring(0, body.indexOf("</form>"));
        List<String[]> fields = new ArrayList<>();
        for (Pattern pattern : List.of(INPUT, BOX, AREA)) {
            pattern.matcher(form).results().forEach(field -> fields.add(
                    new String[]{field.group(1), text(field)}));
        }
        CHOICE.matcher(form).results().forEach(choice -> {
            Matcher chosen = CHOSEN.matcher(choice.group(2));
            Matcher first = Pattern.compile("<option value=\"([^\"]*)\"").matcher(choice.group(2));
            fields.add(new String[]{choice.group(1),
                    chosen.find() ? chosen.group(1) : first.find() ? first.group(1) : ""});
        });
        return fields;
    }

    private static String text(MatchResult field) {
        return field.group(2).replace("&quot;", "\"").replace("&lt;", "<").replace("&#39;", "'").replace("&amp;", "&");
    }

    private static HttpResponse<String> send(String path, List<String[]> fields, Map<String, String> changes) {
        StringBuilder sent = new StringBuilder();
        for (String[] field : fields) {
            if (!changes.containsKey(field[0])) {
                add(sent, field[0], field[1]);
            }
        }
        changes.forEach((name, value) -> add(sent, name, value));
        return owner.post(path, BodyPublishers.ofString(sent.toString()), Visitor.OWN_PAGE);
    }

    private static void add(StringBuilder sent, String name, String value) {
        sent.append(sent.isEmpty() ? "" : "&").append(name).append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
    }

    private static JsonNode stored(String visit) {
        return owner.json("/visits/" + visit).path("visit");
    }

    /** Whatever a form said stays as it was said: the page shows all of it, or keeps it. */
    @ParameterizedTest
    @ValueSource(strings = {"late-call", "ten-minute-brushing", "callback-taproom", "clock-change",
            "found-nobody-bakery", "goodwill-clinic", "holiday-call-mercado", "included-visit-hotel",
            "over-midnight-hotel", "packs-and-discount-mercado", "spring-cleaning-bakery", "two-leads-hotel",
            "valve-repair-taproom", "waiting-hotel"})
    void visit_storedAsItIsShown_staysAsItWas(String visit) {
        String path = "/visits/" + visit + "/change";
        Object before = exported(visit);
        String page = owner.get(path).body();

        HttpResponse<String> stored = send(path, form(page), Map.of());

        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        assertThat(exported(visit)).isEqualTo(before);
    }

    /** 16:20 to 18:20 instead of 18:05: 65.33 + 80 min at 147.00/h 196.00 + 52.00 = 313.33; at 8.875 % 27.81: 341.14. */
    @Test
    void correction_takesThePlaceOfTheVisit_andItsPriceIsShownFirst() {
        String bakery = "/visits/warranty-pump-bakery/change";
        String late = "/visits/late-call/change";
        String page = owner.get(late).body();
        assertThat(page).contains("Correct the visit late-call", "value=\"16:20\"", "301.13");

        assertThat(send(late + "/price", form(page), Map.of("person0to", "6:20 pm")).body()).contains("341.14");
        assertThat(stored("late-call").path("people").get(0).path("left").asString()).contains("18:05");
        assertThat(send(late, form(page), Map.of("person0to", "6:20 pm")).headers().firstValue("Location"))
                .contains("/visits/late-call");

        assertThat(stored("late-call").path("people").get(0).path("left").asString()).contains("18:20");
        assertThat(owner.get("/visits/late-call").body()).contains("Issue the invoice, USD\u00a0341.14");
        HttpResponse<String> wrong = send(bakery, form(owner.get(bakery).body()), Map.of("person0to", "nonsense"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("href=\"#person0to\"", "value=\"nonsense\"");
    }

    @Test
    void twoPeople_whoChangeTheSameVisit_seeBothVersionsAndOneDecides() {
        String path = "/visits/two-leads-hotel/change";
        List<String[]> mine = form(owner.get(path).body());
        List<String[]> theirs = form(owner.get(path).body());
        String machine = stored("two-leads-hotel").path("machines").get(0).path("id").asString();
        assertThat(send(path, theirs, Map.of("correction-" + machine, "Cleaned it.", "purchaseOrder", "PO-9"))
                .statusCode()).isEqualTo(303);

        HttpResponse<String> later = send(path, mine, Map.of("correction-" + machine, "Changed the pump."));

        assertThat(later.statusCode()).isEqualTo(409);
        assertThat(later.body()).contains("Changed by " + System.getProperty("user.name") + " on ");
        assertThat(later.body()).contains("Two versions", "Changed the pump.", "Cleaned it.", "PO-9",
                "Purchase order").doesNotContain("Arrived");
        assertThat(stored("two-leads-hotel").path("machines").get(0).path("correction").asString())
                .isEqualTo("Cleaned it.");
        assertThat(send(path, form(later.body()), Map.of()).statusCode()).isEqualTo(303);
        assertThat(stored("two-leads-hotel").path("machines").get(0).path("correction").asString())
                .isEqualTo("Changed the pump.");
        assertThat(stored("two-leads-hotel").path("purchaseOrder").asString()).isNotEqualTo("PO-9");
    }

    /** The bakery's cleaning from 9:15 on: 126 minutes, so done at 11:21; the filter from minute 48 to 56. The same as the terminal tells. */
    @Test
    void plannedVisit_hasItsTimetableBesideTheForm() {
        String address = "/visits/summer-cleaning-bakery/timetable";
        assertThat(owner.get("/visits/summer-cleaning-bakery/change").body()).contains(address);
        String page = owner.get(address).body();
        assertThat(page).contains("126 minutes if all goes as planned, done at 11:21", "10:03", "10:11", "Ada Quill",
                "Put the chemical in", "passes by itself").doesNotContain("stop-and-empty");
        StringWriter told = new StringWriter();
        assertThat(Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(told)).execute("visit", "timetable",
                "summer-cleaning-bakery", "--json", "--shop", office.shop().toString())).isZero();
        assertThat(owner.json(address)).isEqualTo(JsonMapper.shared().readTree(told.toString()));
        assertThat(owner.get("/visits/nothing/timetable").statusCode()).isEqualTo(404);
    }

    @Test
    void plannedVisit_isRecordedAsDone_filledInWithWhatWasPlanned() {
        String visit = "summer-cleaning-bakery";
        assertThat(owner.get("/visits/" + visit).body()).contains("Record it as done");
        String page = owner.get("/visits/" + visit + "/change").body();
        assertThat(page).contains("value=\"2026-07-14\"", "value=\"09:15\"", "value=\"Ada Quill\"")
                .containsPattern("value=\"circulate-descaler\"[^>]* checked")
                .containsPattern("name=\"dose_proof-room_descaler\"[^>]* value=\"16\"");

        HttpResponse<String> stored = send("/visits/" + visit + "/change", form(page), Map.of("person0to", "11:45",
                "ph_proof-room_descaler", "7.1", "strip_proof-room_sanitizer", "200"));

        assertThat(stored.statusCode()).as(stored.body()).isEqualTo(303);
        assertThat(stored(visit).path("state").asString()).isEqualTo("done");
        assertThat(exported(visit).toString()).contains("dose=16", "ph=7.1", "strip=200").doesNotContain("planned");
    }

    /** Parts of words, without accents and capitals, in whichever of its names they stand. */
    @Test
    void visits_areFoundByWhatSomebodyTypes() {
        assertThat(found("BAKERY noor")).containsExactly("warranty-pump-bakery", "ten-minute-brushing");
        assertThat(found("crumb%20quill")).contains("spring-cleaning-bakery").doesNotContain("two-leads-hotel");
        assertThat(found("nobody-of-this-name")).isEmpty();
        assertThat(found("")).hasSizeGreaterThan(10);
    }

    private static List<String> found(String text) {
        return owner.json("/visits?find=" + text.replace(" ", "%20")).path("visits").valueStream()
                .map(visit -> visit.path("id").asString()).toList();
    }

    @Test
    void visit_isWithdrawnWithAReason_andChangedNoMore() {
        String path = "/visits/goodwill-clinic/withdraw";
        HttpResponse<String> without = owner.post(path, Map.of("key", owner.key(path)));
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(without.body()).contains("href=\"#reason\"");

        HttpResponse<String> done = owner.post(path, Map.of("key", owner.key(path), "reason", "Entered twice."));

        assertThat(done.headers().firstValue("Location")).contains("/visits/goodwill-clinic");
        assertThat(owner.get("/visits/goodwill-clinic").body()).contains("Entered twice.")
                .doesNotContain("/change", "/withdraw");
        assertThat(owner.get("/visits/goodwill-clinic/change").statusCode()).isEqualTo(422);
    }

    /** Somebody looks at the price while another changes the visit. */
    @Test
    void invoice_ofAPriceThatIsOutOfDate_isNotIssued() {
        String visit = "/visits/callback-taproom";
        List<String[]> issue = form(owner.get(visit).body());
        String path = visit + "/change";
        assertThat(send(path, form(owner.get(path).body()), Map.of("purchaseOrder", "PO-1")).statusCode())
                .isEqualTo(303);

        HttpResponse<String> refused = send(visit + "/issue", issue, Map.of());

        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("changed by somebody else");
    }

    @Test
    void dividedTime_andASecondStay_areRowsOfTheSamePerson() {
        String path = "/sites/hotel-fernhill/visit";
        Map<String, String> fields = new LinkedHashMap<>(Map.of("key", owner.key(path), "day", "2026-11-04",
                "person0name", "Ada Quill", "person0grade", "lead", "person0from", "9:00", "person0to", "10:00",
                "person0on", "diagnosis"));
        fields.putAll(Map.of("person1name", "Ada Quill", "person1grade", "lead", "person1from", "10:00",
                "person1to", "11:30", "person1on", "repair"));
        fields.putAll(Map.of("person2name", "Ada Quill", "person2grade", "lead", "person2from", "14:00",
                "person2to", "15:00", "person2on", "repair", "person2outcome", "goodwill"));

        String visit = owner.post(path, fields).headers().firstValue("Location").orElseThrow();

        JsonNode people = owner.json(visit).path("visit").path("people");
        assertThat(people).hasSize(2);
        assertThat(people.get(0).path("left").asString()).contains("11:30");
        assertThat(exported(visit.substring(8)).toString())
                .contains("spent=[{until=2026-11-04T10:00, on=diagnosis}, {until=2026-11-04T11:30, on=repair}]",
                        "outcome=goodwill");
    }

    /** In whatever order its keys stand. */
    private static Object exported(String visit) {
        StringWriter out = new StringWriter();
        assertThat(Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(out, true)).execute("export", "-", visit,
                "--shop", office.shop().toString())).isZero();
        return new Load(LoadSettings.builder().build()).loadFromString(out.toString());
    }
}
