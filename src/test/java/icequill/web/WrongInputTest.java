package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong is told in the language of the page, and without the commands of a terminal. */
@Tag("wide")
class WrongInputTest {

    /** A list of problems, what is wrong with a field, and what would be right. */
    private static final Pattern TOLD = Pattern.compile(
            "<div class=\"problems\".*?</div>|<p class=\"error\".*?</p>|<span (?:class=\"allowed\"|lang=\"en\").*?</span>",
            Pattern.DOTALL);
    private static final List<String> ASKED = List.of("/sites/no-such", "/sites/hotel-fernhill?machine=no-such",
            "/sites/hotel-fernhill?month=2026-13", "/sites/no-such/visit", "/visits/no-such", "/visits/no-such/change",
            "/visits?month=2026-13", "/visits?state=odd", "/visits?site=no-such", "/visits?customer=no-such",
            "/visits?machine=no-such", "/visits?by=Nobody", "/visits?caller=Nobody", "/papers/INV-2026-09999",
            "/papers?month=1800-01", "/papers?kind=odd", "/papers?state=odd", "/papers?store=no-such",
            "/papers?caller=Nobody", "/papers?state=open&kind=quote", "/papers/INV-2026-09999/credit",
            "/rates?on=someday", "/rates?site=no-such", "/rates?on=1999-01-01", "/rates/try?version=odd",
            "/rates/try?from=2026-05-02&until=2026-05-01", "/rates/try?from=x",
            "/rates/raise?from=someday&percent-labor=x&step-labor=1.234", "/rates/raise?from=2027-01-01",
            "/rates/raise?from=2027-01-01&percent-labor=900", "/runs/no-such", "/quotes/QUO-2026-00099",
            "/sites/no-such/quote");

    @TempDir
    static Path folder;

    private static OpenOffice office;
    private static Visitor english;
    private static Visitor spanish;
    private static String invoice;

    @BeforeAll
    static void open() {
        office = OpenOffice.withVisits(folder.resolve("shop"), "late-call", "ten-minute-brushing");
        english = office.owner();
        spanish = office.owner();
        assertThat(spanish.post("/language", Map.of("language", "es", "back", "/today")).statusCode()).isEqualTo(303);
        invoice = english.post("/visits/late-call/issue", Map.of("key", english.key("/visits/late-call"))).headers()
                .firstValue("Location").orElseThrow();
    }

    @AfterAll
    static void close() {
        office.close();
    }

    @Test
    void unknownNamesAndDays_areToldInTheReadersWords() {
        Map<String, String> answers = new LinkedHashMap<>();
        ASKED.forEach(path -> answers.put(path, spanish.get(path).body()));
        assertSpanish(answers);
        ASKED.forEach(path -> answers.put(path, english.get(path).body()));
        assertNoCommands(answers);
    }

    @Test
    void wrongForms_areToldInTheReadersWords() {
        assertSpanish(sentBy(spanish));
        assertNoCommands(sentBy(english));
    }

    private static Map<String, String> sentBy(Visitor owner) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (Map<String, String> visit : List.of(Map.<String, String>of(),
                Map.of("day", "yesterday", "person0name", "Ada Quill", "person0grade", "chief", "person0from", "25:00",
                        "person0to", "8"),
                Map.of("day", "2026-05-20", "person0name", "Ada Quill", "person0grade", "lead", "person0from", "16:20",
                        "person0to", "16:00", "person0on", "repair", "machine", "no-such"),
                Map.of("day", "2027-05-20", "person0name", "Ada Quill", "person0grade", "lead", "person0from", "16:20",
                        "person0to", "17:00", "person0on", "repair", "machine", "lobby-bar", "line0what", "no-such",
                        "line0amount", "1.200"))) {
            put(answers, owner, "/sites/hotel-fernhill/visit", visit);
        }
        put(answers, owner, "/visits/ten-minute-brushing/withdraw", Map.of());
        put(answers, owner, "/quotes/new", Map.of("count", "x", "months", "5", "begins", "soon", "margin", "x"));
        put(answers, owner, "/today/issue", Map.of());
        put(answers, owner, "/shop/import", Map.of());
        for (String asked : List.of("line=99&reason=Late.", "amount=x&reason=Late.", "amount=99999&reason=Late.",
                "line=1&amount=5&reason=Late.", "line=1")) {
            answers.put(invoice + "/credit?" + asked, owner.get(invoice + "/credit?" + asked).body());
        }
        for (String asked : List.of("due=keep", "purchaseOrder=FH-2&due=odd&reason=Wrong.", "due=keep&reason=Wrong.")) {
            answers.put(invoice + "/reissue?" + asked, owner.get(invoice + "/reissue?" + asked).body());
        }
        return answers;
    }

    private static void put(Map<String, String> answers, Visitor owner, String path, Map<String, String> fields) {
        Map<String, String> form = new LinkedHashMap<>(fields);
        form.put("key", owner.key(path));
        answers.put(path + fields, owner.post(path, form).body());
    }

    private static void assertSpanish(Map<String, String> answers) {
        SoftAssertions all = new SoftAssertions();
        answers.forEach((asked, page) -> {
            all.assertThat(page).as(asked).contains("<html lang=\"es\">");
            all.assertThat(told(page)).as(asked).noneMatch(text -> text.contains("lang=\"en\""));
        });
        all.assertThat(answers.values().stream().filter(page -> !told(page).isEmpty()).count()).as("pages that tell")
                .isGreaterThan(answers.size() / 2);
        assertNoCommands(answers);
        all.assertAll();
    }

    private static void assertNoCommands(Map<String, String> answers) {
        SoftAssertions all = new SoftAssertions();
        answers.forEach((asked, page) -> all.assertThat(told(page)).as(asked)
                .noneMatch(text -> text.contains("icequill ") || text.contains("--")));
        all.assertAll();
    }

    private static List<String> told(String page) {
        return TOLD.matcher(page).results().map(MatchResult::group).toList();
    }
}
