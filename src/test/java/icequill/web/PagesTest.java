package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** All pages of the finished demo, as they are found by their links. */
@Tag("wide")
class PagesTest {

    private static final Pattern LINK = Pattern.compile("<a [^>]*href=\"([^\"#]*)[^\"]*\"");
    private static final Pattern HEADING = Pattern.compile("<h1>[^<]+</h1>");
    private static final Pattern LOADED = Pattern.compile("<(?:script|link)[^>]*(?:src|href)=\"([^\"]*)\"");
    private static final Pattern INLINE = Pattern
            .compile("<script(?![^>]* src=)|<style|<[a-z][^>]*\\s(?:style|on[a-z]+)\\s*=");
    private static final Pattern FORM = Pattern.compile("(?s)<form ([^>]*method=\"post\"[^>]*)>(.*?)</form>");
    private static final Pattern TITLE = Pattern.compile("<title>[^<]+ · Quillwater Ice Machine Care</title>");
    /** Needs no key: it changes nothing but the session that sends it, any number of times alike, and comes of our own pages only. */
    private static final String LANGUAGE = "action=\"/language\"";

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Visitor owner;
    private static Map<String, HttpResponse<String>> pages;

    @BeforeAll
    static void walk() throws IOException {
        office = OpenOffice.of(FinishedDemo.copy(folder.resolve("shop")));
        owner = office.owner();
        pages = new LinkedHashMap<>();
        Deque<String> next = new ArrayDeque<>(List.of("/today"));
        while (!next.isEmpty()) {
            String path = next.remove();
            if (!pages.containsKey(path)) {
                HttpResponse<String> answer = owner.get(path);
                pages.put(path, answer);
                if (isPage(answer)) {
                    found(LINK, answer.body()).stream().map(link -> link.group(1).replace("&amp;", "&"))
                            .filter(Predicate.not(link -> link.matches("(tel|mailto):.*|.*/(bare|xml|ics[?].*)")))
                            .map(link -> link.matches("([?].*)?") ? path.replaceFirst("[?].*", "") + link : link)
                            .forEach(next::add);
                }
            }
        }
    }

    @AfterAll
    static void close() {
        office.close();
    }

    /** As many as the demo has sites, visits and papers at least. */
    @Test
    void walk_findsSitesVisitsPapersAndTheirFiles() {
        assertThat(pages.keySet()).contains("/today", "/sites", "/visits", "/papers", "/rates", "/shop",
                "/sites/hotel-fernhill", "/visits/ten-minute-brushing", "/papers/INV-2026-00001",
                "/papers/INV-2026-00001/pdf").hasSizeGreaterThan(40);
    }

    @Test
    void everyPage_isAWholePage() {
        pages.forEach((path, answer) -> {
            assertThat(answer.statusCode()).as(path + answer.body()).isEqualTo(200);
            if (isPage(answer)) {
                String body = answer.body();
                assertThat(body).as(path).startsWith("<!DOCTYPE html>\n<html lang=\"en\">").containsPattern(TITLE);
                assertThat(found(HEADING, body)).as(path).hasSize(1);
                assertThat(found(INLINE, body)).as(path).isEmpty();
                assertThat(found(LOADED, body)).as(path).isNotEmpty()
                        .allMatch(loaded -> loaded.group(1).startsWith("/assets/"));
                assertThat(body).as(path).doesNotContain("Optional[", "icequill.", "null")
                        .doesNotContainPattern("[ >\"]page[.][a-z]");
            } else {
                assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
                assertThat(answer.body()).startsWith("%PDF-");
            }
        });
    }

    @Test
    void everyForm_carriesAKeyOfItsOwn() {
        List<String> keys = new ArrayList<>();
        pages.forEach((path, answer) -> found(FORM, isPage(answer) ? answer.body() : "").stream()
                .filter(form -> !form.group(1).contains(LANGUAGE)).forEach(form -> {
                    assertThat(form.group(2)).as(path)
                            .containsPattern(
                                    "<input type=\"hidden\" name=\"key\" value=\"[A-Za-z0-9_-]{43}[.][^\"]{43}\">");
                    keys.add(form.group(2).replaceFirst("(?s).*name=\"key\" value=\"([^\"]+)\".*", "$1"));
                }));
        assertThat(keys).doesNotHaveDuplicates();
    }

    /** Whatever kind of answer a browser would rather have. */
    @ParameterizedTest
    @ValueSource(strings = {"text/html,application/xhtml+xml,*/*;q=0.8", "*/*", "application/xml"})
    void addressOfNoPage_isToldOnAPage(String accept) {
        HttpResponse<String> answer = owner.get("/nowhere", "Accept", accept);

        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("<html lang=\"en\">", "<h1>");
    }

    /** Words of every language that pages can be had in are there: none stands as its key. */
    @ParameterizedTest
    @CsvSource({"en, Sites", "es, Sitios", "fr, Sites", "de, Standorte"})
    void everyPage_isInTheLanguageThatWasChosen(String tag) {
        Visitor reader = office.owner();
        reader.post("/language", Map.of("language", tag));
        for (String path : List.of("/today", "/sites", "/sites/hotel-fernhill", "/visits",
                "/visits/ten-minute-brushing",
                "/papers", "/papers/INV-2026-00001", "/rates", "/rates/try?on=2026-12-30", "/rates/adopt",
                "/rates/raise?from=2027-01-01&percent-labor=4", "/today/issue", "/shop/import", "/shop/audit",
                "/rates/versions", "/shop", "/nowhere",
                "/papers/no-such")) {
            assertThat(reader.get(path).body()).as(path).contains("<html lang=\"" + tag + "\"");
            assertThat(office.faults()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "/today | | | today --date 2026-12-30",
            "/sites |  |  | site list",
            "/sites?find=hotel |  |  | site list hotel",
            "/sites/hotel-fernhill | card |  | site card hotel-fernhill",
            "/sites/hotel-fernhill | history |  | site history hotel-fernhill",
            "/sites/hotel-fernhill?month=2026-05 | history |  | site history hotel-fernhill --month 2026-05",
            "/visits |  |  | visit list --most 100",
            "/visits?state=billed&month=2026-05 |  |  | visit list --state billed --month 2026-05 --most 100",
            "/visits?find=hotel&by=quill |  |  | visit list --find hotel --by quill --most 100",
            "/visits/ten-minute-brushing |  | visit | visit show ten-minute-brushing",
            "/papers?find=pennon |  |  | find pennon --most 100",
            "/papers?kind=invoice&month=2026-05 |  |  | find --kind invoice --month 2026-05 --most 100",
            "/papers/INV-2026-00001 |  | paper | paper show INV-2026-00001",
            "/rates | | | rates prices --on 2026-12-30",
            "/rates?on=2026-06-01&site=hotel-fernhill | | | rates prices --on 2026-06-01 --site hotel-fernhill",
            "/rates/try?on=2026-12-30 | | | rates try --on 2026-12-30",
            "/rates/adopt | | | rates adopt",
            "/rates/raise?from=2027-01-01&percent-labor=4&step-labor=0,50 | | | rates raise labor=4:0.50 --from 2027-01-01",
            "/rates/versions | all |  | rates list",
            "/rates/versions | now |  | rates show",
            "/earnings | | | visit earnings",
            "/minutes | | | visit minutes --date 2026-12-30",
            "/earnings?by=customer&month=2026-05 | | | visit earnings --by customer --month 2026-05",
            "/earnings?site=crumb-lane-bakery | | | visit earnings --site crumb-lane-bakery",
            "/quotes | | | quote list",
            "/shop | | | shop show"})
    void json_isWhatTheCommandLinePrints(String path, String part, String printedPart, String command) {
        assertThat(part(owner.json(path), part)).isEqualTo(part(printed(command), printedPart));
    }

    private static JsonNode part(JsonNode whole, String name) {
        JsonNode part = name == null ? whole : whole.path(name);
        assertThat(part.isMissingNode()).as(whole + " " + name).isFalse();
        return part;
    }

    /** What is wrong with a question is told as the command line tells it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "/sites/no-such | 404 | site card no-such",
            "/visits/no-such | 404 | visit show no-such",
            "/papers/no-such | 404 | paper show no-such",
            "/visits?month=2026-13 | 422 | visit list --month 2026-13"})
    void problems_areThoseOfTheCommandLine(String path, int status, String command) {
        HttpResponse<String> answer = owner.get(path, "Accept", "application/json");

        assertThat(answer.statusCode()).isEqualTo(status);
        assertThat(JsonMapper.shared().readTree(answer.body()).at("/problems/0/message").asString())
                .isEqualTo(printed(command).at("/problems/0/message").asString()).isNotEmpty();
    }

    private static JsonNode printed(String command) {
        StringWriter out = new StringWriter();
        Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(new StringWriter()))
                .setCaseInsensitiveEnumValuesAllowed(true)
                .execute((command + " --json --shop " + office.shop()).split(" "));
        return JsonMapper.shared().readTree(out.toString());
    }

    private static boolean isPage(HttpResponse<String> answer) {
        return answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html");
    }

    private static List<MatchResult> found(Pattern pattern, String text) {
        return pattern.matcher(text).results().toList();
    }
}
