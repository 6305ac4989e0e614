package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A maintenance quote made while the customer waits, from what is typed to what is issued. Amounts are worked out by hand from the
 * demo's prices: a service call within 30 miles 52.00, labor 98.00/h, descaler 16 fl oz at 1.8495, sanitizer 2 fl oz at 0.85, a filter
 * 87.25 every six months; tax 8.875 %.
 */
@Tag("wide")
class MadeQuoteTest {

    private static final String BAKERY = "/sites/crumb-lane-bakery/quote";
    private static final String NEW = "/quotes/new";
    private static final String DAY = "2026-12-30";
    private static final List<String> OWNERS_WORDS = List.of("margin", "earning", "cost", "wage");

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Visitor owner;

    /** Where sites do not differ from each other, a clock comes out as it was put in. */
    @BeforeAll
    static void open() throws IOException {
        Path shop = DemoShop.in(folder.resolve("shop"));
        Path forecast = shop.resolve("pricing/forecast.yaml");
        Files.writeString(forecast, Files.readString(forecast, StandardCharsets.UTF_8)
                .replaceFirst("(?m)^sitesDiffer:.*$", ""), StandardCharsets.UTF_8);
        office = OpenOffice.of(shop);
        owner = office.owner();
    }

    @AfterAll
    static void close() {
        office.close();
    }

    /** Somebody new, five miles away, for whom a full clean takes an hour and a half. */
    private static Map<String, String> newCustomer(String name) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("customerName", name);
        fields.put("street", "2 Mill Lane");
        fields.put("city", "Alderton");
        fields.put("region", "NY");
        fields.put("postalCode", "10999");
        fields.put("country", "US");
        fields.put("kind", "restaurant");
        fields.put("miles", "5");
        fields.put("taxPlace", "alder-county");
        fields.put("new0-where", "beside the bar");
        fields.put("new0-model", "Cuber 350");
        fields.put("new0-rate", "350");
        fields.put("new0-make", "batch");
        fields.put("new0-form", "self-contained");
        fields.put("new0-cooling", "air");
        fields.put("new0-position", "vertical");
        fields.put("new0-plating", "nickel");
        fields.put("new0-connection", "cord-and-plug");
        fields.put("minutes-full-clean", "90");
        fields.put("start", "2027-01-01");
        fields.put("billing", "quarterly");
        return fields;
    }

    private static Map<String, String> bakery() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("start", "2027-01-01");
        fields.put("machine", "proof-room");
        fields.put("billing", "quarterly");
        fields.put("found-proof-room", "slime");
        fields.put("note-proof-room", "Flour under the \"curtain\".");
        fields.put("cleaned-proof-room", "2025-12-30");
        fields.put("callsLastYear", "3");
        fields.put("callMinutes", "105");
        return fields;
    }

    private static JsonNode figures(String page, Map<String, String> fields) {
        HttpResponse<String> answer = owner.post(page + "/figures", fields,
                List.of("Sec-Fetch-Site", "same-origin", "Accept", "application/json"));
        JsonNode told = JsonMapper.shared().readTree(answer.body());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(told.has("problems") ? 422 : 200);
        return told;
    }

    private static JsonNode choice(JsonNode figures, String kind, String plan) {
        return StreamSupport.stream(figures.path("amounts").path("choices").spliterator(), false)
                .filter(choice -> choice.path("kind").asString().equals(kind)
                        && choice.path("plan").asString("").equals(plan))
                .findFirst().orElseThrow();
    }

    private static HttpResponse<String> issue(String page, Map<String, String> fields) {
        Map<String, String> form = new LinkedHashMap<>(fields);
        form.put("key", owner.key(page));
        return owner.post(page, form);
    }

    private static String location(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return answer.headers().firstValue("Location").orElseThrow();
    }

    private static JsonNode run(String... words) {
        List<String> line = new ArrayList<>(List.of(words));
        line.addAll(List.of("--shop", office.shop().toString(), "--json"));
        StringWriter told = new StringWriter();
        int status = Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(told))
                .setErr(new PrintWriter(new StringWriter())).execute(line.toArray(String[]::new));
        assertThat(status).as(line + told.toString()).isZero();
        return JsonMapper.shared().readTree(told.toString());
    }

    /**
     * A visit with a filter: 52.00 + 90 min 147.00 + 29.59 + 1.70 + 87.25 = 317.54, without one 230.29. Semiannual: twice 317.54 = 635.08,
     * less 5 % 603.33, to full steps of 5 605.00; in four payments of 151.25, each with 13.42 tax. Quarterly: filters on two of
     * four visits, 635.08 + 460.58 = 1,095.66, less 10 % 986.09, 985.00. Singly, the recommended two: 635.08, tax 2 x 28.18.
     */
    @Test
    void waysOfCare_ofSomebodyNew_costWhatTheRatesSay() {
        JsonNode figures = figures(NEW, newCustomer("Mill Lane Diner"));

        assertThat(figures.path("recommended").path("months").asInt()).isEqualTo(6);
        assertThat(choice(figures, "agreement", "semiannual").path("net").asString()).isEqualTo("605.00");
        assertThat(choice(figures, "agreement", "semiannual").path("gross").asString()).isEqualTo("658.68");
        assertThat(choice(figures, "agreement", "semiannual").path("installments").size()).isEqualTo(4);
        assertThat(choice(figures, "agreement", "quarterly").path("net").asString()).isEqualTo("985.00");
        assertThat(choice(figures, "booked-singly", "semiannual").path("net").asString()).isEqualTo("635.08");
        assertThat(choice(figures, "booked-singly", "semiannual").path("gross").asString()).isEqualTo("691.44");
        assertThat(choice(figures, "pay-per-call", "").path("net").asString()).isEqualTo("0.00");
        assertThat(figures.path("validUntil").asString()).isEqualTo("2027-01-29");
        assertThat(run("site", "list").toString()).doesNotContain("mill-lane-diner");
    }

    /** A page has one more row than are filled; whoever has six machines is asked for a seventh. */
    @Test
    void machines_ofSomebodyNew_mayBeMany() {
        Map<String, String> fields = newCustomer("Six Taps");
        for (int i = 1; i < 6; i++) {
            String row = "new" + i;
            newCustomer("Six Taps").forEach((field, value) -> {
                if (field.startsWith("new0")) {
                    fields.put(field.replace("new0", row), value);
                }
            });
            fields.put(row + "-where", "tap " + row);
        }
        Map<String, String> faulty = new LinkedHashMap<>(fields);
        faulty.remove("city");
        assertThat(issue(NEW, faulty).body()).contains("new5-where", "new6-where").doesNotContain("new7-where");

        assertThat(location(issue(NEW, fields))).startsWith("/quotes/MQ-");
        assertThat(run("machine", "list", "six-taps").path("machines").size()).isEqualTo(6);
    }

    /**
     * A clock of shape 2.5724 and scale 13.838 months stops, of 20, 2.2 by month 6 and 10 by month 12 (1 - exp(-(6/13.838)^2.5724) = 0.11);
     * cleaned after six months, 20 x (1 - 0.89^2) = 4.16. With 0.2 faults a year it gives .422203 calls cleaned every six months and 1.411268
     * twelve months after the last cleaning, as twenty million simulated years did.
     */
    @Test
    void guesses_arePlayedBackInMachinesOfTwenty_withWhoSaysSo() {
        Map<String, String> fields = newCustomer("Pond Street Clinic");
        fields.put("new0-cooling", "water");
        fields.put("water-usual.by6", "2.2");
        fields.put("water-usual.by12", "10");
        fields.put("faults-usual", "0.2");
        fields.put("water-from", "visits");
        fields.put("water-visits", "14");

        JsonNode figures = figures(NEW, fields);

        JsonNode water = figures.path("estimates").path(0);
        assertThat(figures.path("estimates").size()).isEqualTo(1);
        assertThat(water.path("cause").asString()).isEqualTo("water");
        assertThat(water.path("by6").asString()).isEqualTo("2.2");
        assertThat(water.path("by12").decimalValue()).isEqualByComparingTo("10.0");
        assertThat(water.path("cleanedBy12").asString()).isEqualTo("4.2");
        assertThat(water.path("origin").asString()).isEqualTo("from 14\u00a0visits");
        assertThat(expectedCalls(figures, "pay-per-call")).isEqualTo("1.4");
        assertThat(expectedCalls(figures, "agreement")).isEqualTo("0.4");
        assertThat(owner.post(NEW + "/figures", fields).body()).contains("2.2 by month 6", "10 by month 12",
                "from 14\u00a0visits", "aria-label=\"", "<svg class=\"drawn\"");
    }

    private static String expectedCalls(JsonNode figures, String kind) {
        return StreamSupport.stream(figures.path("asPrinted").spliterator(), false)
                .filter(way -> way.path("kind").asString().equals(kind)).findFirst().orElseThrow()
                .path("expectedCalls").asString();
    }

    /** The same content as a file, at the terminal: every key and figure; and what the comparison sheet prints. */
    @Test
    void figures_areThoseOfTheTerminal() throws IOException {
        Path file = folder.resolve("bakery-plan.yaml");
        Files.writeString(file, """
                format: 1
                form: maintenance-request
                site: crumb-lane-bakery
                start: 2027-01-01
                billing: quarterly
                survey:
                  date: 2026-12-30
                  machines:
                    - machine: proof-room
                      lastCleaned: 2025-12-30
                      found: [slime]
                      note: Flour under the "curtain".
                calls:
                  lastYear: 3
                  minutes: 105
                  on: repair
                forecast:
                  assume:
                    randomFaults: {usual: 0.3, low: 0.1, high: 0.5, from: customer}
                """, StandardCharsets.UTF_8);
        Map<String, String> fields = bakery();
        fields.put("faults-usual", "0,3");
        fields.put("faults-from", "customer");

        JsonNode page = figures(BAKERY, fields);

        assertThat(page).isEqualTo(run("quote", "price", file.toString(), "--date", DAY));
        assertThat(page.path("asPrinted"))
                .isEqualTo(run("compare", file.toString(), "--date", DAY).path("asPrinted"));
        assertThat(page.path("amounts"))
                .isEqualTo(run("quote", "draft", file.toString(), "--date", DAY).path("amounts"));
        fields.put("owner", "yes");
        assertThat(figures(BAKERY, fields))
                .isEqualTo(run("quote", "price", file.toString(), "--date", DAY, "--owner"));
    }

    /** Whoever asks for it sees it; no paper and no answer without asking holds any of it. */
    @Test
    void whatTheShopEarns_isToldToTheOwnerWhoAsksAlone() {
        Map<String, String> asked = bakery();
        asked.put("owner", "yes");
        assertThat(figures(BAKERY, asked).path("earnings").path("rows").size()).isPositive();
        assertThat(owner.post(BAKERY + "/figures", asked).body()).contains("Margin");

        assertThat(keys(figures(BAKERY, bakery()))).noneMatch(MadeQuoteTest::isOwners);
        assertThat(owner.post(BAKERY + "/figures", bakery()).body()).doesNotContain("Margin", "Our cost");
        for (String paper : List.of("quote", "comparison")) {
            asked.put("paper", paper);
            HttpResponse<String> withIt = owner.post(BAKERY + "/paper", asked);
            Map<String, String> plain = bakery();
            plain.put("paper", paper);
            assertThat(withIt.headers().firstValue("Content-Type")).contains("application/pdf");
            assertThat(withIt.body()).isEqualTo(owner.post(BAKERY + "/paper", plain).body());
        }
        asked.remove("paper");
        String quote = location(issue(BAKERY, asked));
        assertThat(keys(owner.json(quote))).noneMatch(MadeQuoteTest::isOwners);
        assertThat(owner.get(quote).body()).doesNotContain("Margin", "Our cost");
        assertThat(run("export", "-", quote.substring("/quotes/".length()).toLowerCase(Locale.ROOT))
                .toString()).doesNotContain("owner");
    }

    private static boolean isOwners(String key) {
        return OWNERS_WORDS.stream().anyMatch(key.toLowerCase(Locale.ROOT)::contains);
    }

    private static Set<String> keys(JsonNode node) {
        Set<String> keys = new TreeSet<>();
        node.propertyNames().forEach(keys::add);
        node.forEach(child -> keys.addAll(keys(child)));
        return keys;
    }

    /** With all that was typed of him: the second click, and the form of a second window, give what the first gave, or nothing. */
    @Test
    void quoteForSomebodyNew_isIssuedOnce_andStoresHim() {
        String name = "<script>alert(1)</script> & \"Sons\"";
        Map<String, String> form = newCustomer(name);
        form.put("ownMinutes", "10");
        form.put("ownWage", "22.00");
        form.put("ownBrush", "8");
        form.put("reach", "new0");
        form.put("customerLanguage", "es");
        String other = owner.key(NEW);
        form.put("key", owner.key(NEW));

        String quote = location(owner.post(NEW, form));
        assertThat(location(owner.post(NEW, form))).isEqualTo(quote);
        form.put("key", other);
        HttpResponse<String> again = owner.post(NEW, form);
        assertThat(again.body()).contains("The book has a site", "value=\"&lt;script&gt;alert(1)&lt;/script&gt;")
                .doesNotContain("<script>alert");

        String number = quote.substring("/quotes/".length());
        String site = "script-alert-1-script-sons";
        assertThat(owner.json("/quotes?find=script").path("papers").size()).isEqualTo(1);
        assertThat(owner.json("/quotes?find=script").path("papers").path(0).path("validUntil").asString())
                .isEqualTo("2027-01-29");
        assertThat(owner.json(quote)).isEqualTo(run("quote", "show", number).path("paper"));
        assertThat(owner.json("/quotes?find=script")).isEqualTo(run("quote", "list", "script"));
        assertThat(owner.json("/sites/" + site).path("card").path("name").asString()).isEqualTo(name);
        for (String page : List.of("/quotes", quote, "/sites/" + site, "/sites/" + site + "/quote")) {
            assertThat(owner.get(page).body()).as(page).contains("&lt;script&gt;").doesNotContain("<script>alert");
        }
        assertThat(owner.get(quote).body()).contains("605.00", quote + "/comparison", quote + "/brushing",
                "2 × 317.54");
        assertThat(owner.get(quote + "/comparison").headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(owner.get(quote + "/brushing").headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(run("compare", number.toLowerCase(Locale.ROOT), "--date", DAY).path("plans")
                .path("semiannual").path("price").asString()).isEqualTo("605.00");
    }

    @Test
    void everythingWrong_isToldAtOnceBesideItsField_andNothingTypedIsLost() {
        Map<String, String> fields = bakery();
        fields.remove("machine");
        fields.put("start", "soon");
        fields.put("callsLastYear", "two");
        fields.put("water-usual.by6", "12");
        fields.put("water-usual.by12", "13");
        fields.put("ownMinutes", "10");
        fields.put("language", "xx");

        String page = owner.post(BAKERY + "/figures", fields).body();

        for (String field : List.of("start", "callsLastYear", "machine", "ownWage", "ownBrush", "language")) {
            assertThat(page).as(field).contains("id=\"error-" + field + "-0\"", "href=\"#" + field + "\"");
        }
        assertThat(page).contains("value=\"soon\"", "value=\"two\"", "Flour under the &quot;curtain&quot;.");

        fields = bakery();
        fields.put("water-usual.by6", "12");
        fields.put("water-usual.by12", "13");
        page = owner.post(BAKERY + "/figures", fields).body();
        assertThat(page).contains("id=\"error-water-usual.by12-0\"", "dirt would get safer with time",
                "value=\"13\"");
        assertThat(figures(BAKERY, fields).path("problems").size()).isPositive();
        assertThat(issue(BAKERY, fields).body()).contains("dirt would get safer with time");
        fields = newCustomer("Nobody");
        List.of("city", "new0-rate", "miles").forEach(fields::remove);
        page = owner.post(NEW + "/figures", fields).body();
        for (String field : List.of("city", "new0-rate", "miles")) {
            assertThat(page).as(field).contains("id=\"error-" + field + "-0\"");
        }
    }

    /** The typed text comes back with the page, though not what only the owner sees; once issued there is nothing to go on with. */
    @Test
    void whatIsTyped_isKeptUntilItIsIssued() {
        String id = "0123456789-0123456789";
        Map<String, String> typed = bakery();
        typed.put("owner", "yes");
        typed.put("draft", id);
        typed.put("key", owner.key(BAKERY));

        String going = location(owner.post(BAKERY + "/draft", typed));
        assertThat(going).isEqualTo(BAKERY + "?draft=" + id);
        assertThat(owner.get(going).body()).contains("Flour under the &quot;curtain&quot;.", "value=\"2025-12-30\"",
                "Kept as a draft").doesNotContain("Margin", "value=\"yes\" checked");
        assertThat(owner.get("/quotes").body()).contains(going, "/quotes/drafts/" + id + "/discard");

        typed.remove("owner");
        location(owner.post(BAKERY, typed));
        assertThat(owner.get("/quotes").body()).doesNotContain(going);

        typed.put("key", owner.key(BAKERY));
        typed.put("draft", id + "-2");
        String other = location(owner.post(BAKERY + "/draft", typed));
        location(owner.post("/quotes/drafts/" + id + "-2/discard", Map.of("key", owner.key("/quotes"))));
        assertThat(owner.get("/quotes").body()).doesNotContain(other);
    }

    /** Two windows on one draft: one quote, and the second is led to it. */
    @Test
    void draft_issuedInTwoWindows_isOneQuote() {
        String id = "0123456789-0123456789-two";
        Map<String, String> first = bakery();
        first.put("draft", id);
        first.put("key", owner.key(BAKERY));
        Map<String, String> second = new LinkedHashMap<>(first);
        second.put("key", owner.key(BAKERY));
        second.put("billing", "yearly");
        int before = owner.json("/quotes").path("papers").size();

        String quote = location(owner.post(BAKERY, first));
        assertThat(location(owner.post(BAKERY, second))).isEqualTo(quote + "?again=yes");

        assertThat(owner.get(quote + "?again=yes").body()).contains("Nothing was made a second time");
        assertThat(owner.json("/quotes").path("papers").size()).isEqualTo(before + 1);
        assertThat(location(owner.get(BAKERY + "?draft=" + id))).isEqualTo(quote);
    }

    /** Somebody new is kept as a draft, too, under the name that was typed. */
    @Test
    void draftOfSomebodyNew_isKeptUntilItIsIssued() {
        String id = "0123456789-0123456789-new";
        Map<String, String> typed = newCustomer("Larch Street Bar");
        typed.put("draft", id);
        typed.put("key", owner.key(NEW));

        String going = location(owner.post(NEW + "/draft", typed));

        assertThat(going).isEqualTo(NEW + "?draft=" + id);
        assertThat(owner.get(going).body()).contains("value=\"" + typed.get("customerName") + "\"", "Kept as a draft");
        assertThat(owner.get("/quotes").body()).contains("Go on with " + typed.get("customerName"));
        String quote = location(owner.post(NEW, typed));
        assertThat(owner.get("/quotes").body()).doesNotContain("Go on with " + typed.get("customerName"));
        assertThat(location(owner.get(going))).isEqualTo(quote);
    }

    @Test
    void page_isInSpanishForWhoReadsIt() {
        Visitor reader = office.owner();
        reader.post("/language", Map.of("language", "es", "back", "/quotes"));

        assertThat(reader.get("/quotes").body()).contains("lang=\"es\"", "Cotizaciones emitidas");
        assertThat(reader.get(NEW).body()).contains("Una cotización para un cliente nuevo", "Emitir la cotización");
        assertThat(reader.post(BAKERY + "/figures", bakery()).body()).contains("plan trimestral", "Formas de cuidado");
    }

    @Test
    void site_thatTheBookDoesNotHave_isNotFound() {
        assertThat(owner.get("/sites/nowhere/quote").statusCode()).isEqualTo(404);
        assertThat(owner.get("/quotes/MQ-2026-99999").statusCode()).isEqualTo(404);
        assertThat(owner.get("/quotes/MQ-2026-99999/comparison").statusCode()).isEqualTo(404);
    }
}
