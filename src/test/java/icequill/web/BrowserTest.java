package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ForcedColors;
import icequill.cli.Main;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The office in a real browser. Where there is none these tests are skipped, which they say; on the build server they fail. */
@Tag("wide")
class BrowserTest {

    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final List<String> ARGUMENTS = List.of("--no-sandbox", "--disable-quic",
            "--disable-background-networking");
    private static final List<String> RULES = List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa");
    private static final List<String> PAGES = List.of("/today", "/sites", "/sites?find=nothing-at-all",
            "/sites/hotel-fernhill", "/calls", "/calls/new", "/calls/new?site=hotel-fernhill",
            "/calls/new?site=crumb-lane-bakery",
            "/calls/hotel-fernhill-2026-06-10", "/calls/hotel-fernhill-2026-06-10/change",
            "/calls/hotel-fernhill-2026-06-10?", "/visits",
            "/visits/warranty-pump-bakery", "/visits/late-call",
            "/agreements", "/agreements/A-2026-004", "/agreements/A-2026-004/change",
            "/agreements/A-2026-007/change?site=lantern-ceniza&removeSite=yes&day=2026-12-20&from=2027-03-01",
            "/agreements/A-2026-004/order", "/agreements/A-2026-004/transfer?to=fernhill-hotels&from=2026-09-15",
            "/agreements/A-2026-004/end?day=2026-12-01&way=mail",
            "/agreements/A-2026-004/refuse",
            "/agreements/A-2026-004/renewal", "/today/renewals", "/today/due", "/today/visits", "/today/days",
            "/today/announcements?from=2026-07-01&until=2026-09-30",
            "/today/calendar/Ada%20Quill", "/claims", "/refrigerant", "/sites/hotel-fernhill/refrigerant", "/mail",
            "/papers/INV-2026-00001/mail", "/customers/fernhill-hotels/mail", "/mail/write?from=2026-01-01",
            "/mail/returned", "/customers/fernhill-hotels/statement/mail", "/agreements/A-2026-004/paper/mail",
            "/agreements/A-2026-004/notice/mail", "/jobs", "/jobs/recommended",
            "/sites/hotel-fernhill/repair",
            "/sites/hotel-fernhill/visit", "/visits/warranty-pump-bakery/change",
            "/visits/warranty-pump-bakery/withdraw", "/papers", "/papers/INV-2026-00001",
            "/papers/INV-2026-00001/credit",
            "/papers/INV-2026-00001/reissue", "/papers/QUO-2026-00001", "/quotes", "/quotes/new", "/rates",
            "/rates/try?on=2026-12-30", "/rates/raise?from=2027-01-01&percent-labor=4", "/rates/versions",
            "/rates/adopt",
            "/earnings", "/minutes", "/fit", "/today/issue", "/shop", "/shop/change", "/shop/audit", "/shop/import",
            "/visits?month=2026-13",
            "/nowhere",
            "/enter?key=wrong");
    private static final int WIDE = 1100;
    private static final int HIGH = 800;
    private static final int PATIENCE_MILLIS = 15_000;

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Playwright playwright;
    private static Browser browser;

    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private BrowserContext window;
    private Page page;

    @BeforeAll
    static void open() {
        if (!Files.isExecutable(CHROMIUM)) {
            if ("true".equals(System.getenv("CI"))) {
                fail("the tests of the office in a browser need " + CHROMIUM + " (on Debian: apt install chromium)");
            }
            System.err.println("SKIPPED: the office is not tried in a browser, since there is no " + CHROMIUM
                    + " (on Debian: apt install chromium)");
        }
        assumeTrue(Files.isExecutable(CHROMIUM));
        office = OpenOffice.withVisits(folder.resolve("shop"), "late-call", "ten-minute-brushing", "clock-change",
                "warranty-pump-bakery", "over-midnight-hotel");
        run("invoice", "issue", "late-call", "--date", "2026-05-14");
        run("quote", "issue", office.shop().resolve("quotes/float-switch.yaml").toString(), "--date", "2026-05-14");
        run("call", "take", "hotel-fernhill", "--by", "Bram", "--symptom", "No ice.", "--at", "2026-06-10T09:00",
                "--machine",
                "lobby-bar", "--limit", "300");
        playwright = Playwright
                .create(new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright.chromium()
                .launch(new BrowserType.LaunchOptions().setExecutablePath(CHROMIUM).setArgs(ARGUMENTS));
    }

    @AfterAll
    static void close() {
        if (playwright != null) {
            playwright.close();
        }
        if (office != null) {
            office.close();
        }
    }

    @BeforeEach
    void enter() {
        window("en-US", WIDE);
    }

    private void window(String locale, int width) {
        if (window != null) {
            window.close();
        }
        window = browser.newContext(new Browser.NewContextOptions().setLocale(locale).setViewportSize(width, HIGH));
        window.setDefaultTimeout(PATIENCE_MILLIS);
        page = window.newPage();
        page.onConsoleMessage(message -> complaints.add(message.text() + " " + message.location()));
        page.onPageError(complaints::add);
        page.navigate(office.server().link());
        page.waitForURL(office.address() + "/today");
    }

    @AfterEach
    void leave() {
        window.close();
        assertThat(office.faults()).isEmpty();
    }

    @Test
    void link_leadsToToday_andLeavesNoTraceOfItself() {
        assertThat(page.url()).isEqualTo(office.address() + "/today");
        assertThat(page.locator("h1").textContent()).isEqualTo("Today");
        assertThat(page.evaluate("() => history.length")).isEqualTo(2);
        assertThat(complaints).isEmpty();
    }

    /** WCAG 2.2 A and AA, as far as a program can judge them, each page once: by turns wide in English and narrow in Spanish; and each by 1.4.10. */
    @Test
    void everyPage_isForEveryone() {
        List<String> wrong = unfit("en-US", 1100, everyOther(0), everyOther(0));
        wrong.addAll(unfit("es-US", 320, PAGES, everyOther(1)));
        assertThat(wrong).isEmpty();
    }

    @Tag("long")
    @ParameterizedTest
    @CsvSource({"en-US, 1100", "en-US, 320", "es-US, 1100", "es-US, 320"})
    void everyPage_inEachLanguageAndWidth_isForEveryone(String locale, int width) {
        assertThat(unfit(locale, width, PAGES, PAGES)).isEmpty();
    }

    /** What is wrong with pages, each of which must do without sideways scrolling, as 1.4.10 asks at 320 px. */
    private List<String> unfit(String locale, int width, List<String> pages, List<String> judged) {
        window(locale, width);
        List<String> wrong = new ArrayList<>();
        for (String path : pages) {
            page.navigate(office.address() + path);
            assertThat(page.locator("html").getAttribute("lang")).as(path).isEqualTo(locale.substring(0, 2));
            if (judged.contains(path)) {
                wrong.addAll(violations(path, new AxeBuilder(page).withTags(RULES)));
            }
            if (!Boolean.TRUE.equals(page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"))) {
                wrong.add(path + " scrolls sideways");
            }
        }
        return wrong;
    }

    private static List<String> everyOther(int first) {
        return IntStream.range(0, PAGES.size()).filter(i -> i % 2 == first).mapToObj(PAGES::get).toList();
    }

    /** By the scheme nothing but colors is another. */
    @Test
    void pages_canBeReadInTheDark() {
        assertThat(darkened(List.of("/today", "/sites?find=nothing-at-all", "/visits/late-call",
                "/sites/hotel-fernhill/visit", "/papers/INV-2026-00001", "/rates/try?on=2026-12-30", "/shop/audit",
                "/visits?month=2026-13"))).isEmpty();
    }

    @Tag("long")
    @Test
    void everyPage_canBeReadInTheDark() {
        assertThat(darkened(PAGES)).isEmpty();
    }

    private List<String> darkened(List<String> pages) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        List<String> wrong = new ArrayList<>();
        for (String path : pages) {
            page.navigate(office.address() + path);
            wrong.addAll(violations(path, new AxeBuilder(page).withRules(List.of("color-contrast"))));
        }
        return wrong;
    }

    /** Where the system sets all colors, borders and outlines still tell where one is and what can be done. */
    @Test
    void formsAndPlaces_areToldWithoutColorsOfOurs() {
        page.emulateMedia(new Page.EmulateMediaOptions().setForcedColors(ForcedColors.ACTIVE));
        page.navigate(office.address() + "/sites/hotel-fernhill");

        assertThat(page.evaluate("() => matchMedia('(forced-colors: active)').matches")).isEqualTo(true);
        page.locator("main .act").first().focus();
        assertThat(page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle")).isEqualTo("solid");
        assertThat(page.evaluate("() => getComputedStyle(document.activeElement).borderTopStyle")).isEqualTo("solid");
        assertThat(page.evaluate("() => { const at = document.querySelector('nav [aria-current]');"
                + " return getComputedStyle(at).borderBottomColor !== getComputedStyle(document.body).backgroundColor; }"))
                .isEqualTo(true);
    }

    private static List<String> violations(String where, AxeBuilder judge) {
        return judge.setLegacyMode(true).analyze().getViolations().stream()
                .map(rule -> where + ": " + rule.getId() + ", " + nodes(rule)).toList();
    }

    private static String nodes(Rule rule) {
        return String.join("; ", rule.getNodes().stream().map(node -> node.getHtml() + " " + node.getFailureSummary())
                .toList());
    }

    @Test
    void sites_areFoundWhileTyping() {
        page.navigate(office.address() + "/sites");
        assertThat(page.locator("tbody tr").count()).isEqualTo(9);

        page.locator("#find").pressSequentially("fern");

        PlaywrightAssertions.assertThat(page.locator("tbody tr")).hasCount(1);
        PlaywrightAssertions.assertThat(page).hasURL(office.address() + "/sites?find=fern");
        assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("find");
        assertThat(page.locator("tbody th").textContent()).isEqualTo("Hotel Fernhill Alderton");
        page.reload();
        assertThat(page.locator("tbody tr").count()).isEqualTo(1);
        assertThat(complaints).isEmpty();
    }

    /** Tab and Enter alone, from what waits today to the invoice. */
    @Test
    void invoice_isIssuedByKeyboardAlone() {
        tabTo("a[href='/visits/ten-minute-brushing']");
        page.keyboard().press("Enter");
        page.waitForURL("**/visits/ten-minute-brushing");
        tabTo("main form button");
        assertThat(page.locator("main form button").textContent()).contains("USD");
        page.keyboard().press("Enter");

        page.waitForURL("**/papers/INV-*");
        assertThat(page.locator("h1").textContent()).matches("Invoice INV-2026-[0-9]{5}");
        assertThat(complaints).isEmpty();
    }

    /** What has the focus can be seen. */
    private void tabTo(String target) {
        for (int i = 0; i < 60; i++) {
            page.keyboard().press("Tab");
            if (Boolean.TRUE.equals(page.evaluate("target => document.activeElement.matches(target)", target))) {
                assertThat(page.evaluate("() => getComputedStyle(document.activeElement).outlineStyle"))
                        .isEqualTo("solid");
                return;
            }
        }
        fail("not reached by Tab: " + target);
    }

    @Test
    void skipLink_leadsToTheContent() {
        page.keyboard().press("Tab");
        assertThat(page.evaluate("() => document.activeElement.className")).isEqualTo("skip");
        page.keyboard().press("Enter");

        assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("main");
    }

    @Test
    void button_clickedTwice_issuesOneInvoice() {
        int before = invoices();
        page.navigate(office.address() + "/visits/clock-change");
        page.locator("main form button").dblclick();

        page.waitForURL("**/papers/INV-*");
        assertThat(invoices()).isEqualTo(before + 1);
    }

    @Test
    void button_afterGoingBack_issuesNoSecondInvoice() {
        int before = invoices();
        page.navigate(office.address() + "/visits/over-midnight-hotel");
        String form = page.locator("main form").innerHTML();
        page.locator("main form button").click();
        page.waitForURL("**/papers/INV-*");
        String paper = page.url();

        page.goBack();
        assertThat(page.locator("main").textContent()).contains(paper.replaceFirst(".*/", ""));
        assertThat(page.locator("main form").count()).isZero();

        // As a browser shows it that kept the page.
        page.evaluate("form => { const again = document.createElement('form'); again.method = 'post';"
                + " again.action = '/visits/over-midnight-hotel/issue'; again.innerHTML = form;"
                + " document.querySelector('main').append(again); }", form);
        page.locator("main form button").click();
        page.waitForURL(Pattern.compile(Pattern.quote(paper)));
        assertThat(invoices()).isEqualTo(before + 1);
    }

    /**
     * Nothing but keys, from the site's page to the visit, with a part found by three letters, kept while it was typed and shown in
     * another language on the way. 52.00 + 98.00 for an hour + 87.25 for a filter, at 8.875 %.
     */
    @ParameterizedTest
    @CsvSource({"1100, 20, Wednesday", "320, 21, Thursday"})
    void visit_isEnteredByKeyboardAlone_andNothingTypedIsLostByLeaving(int width, int day, String weekday) {
        window("en-US", width);
        page.navigate(office.address() + "/sites/hotel-fernhill");
        tabTo("a[href='/sites/hotel-fernhill/visit']");
        page.keyboard().press("Enter");
        page.waitForURL("**/sites/hotel-fernhill/visit");
        type("#day", "May " + day + ", 2026");
        type("#person0name", "Ada Quill");
        type("#person0from", "10:00");
        type("#person0to", "11:00");
        page.keyboard().press("Enter");
        tabTo("input[data-digit='2']");
        page.keyboard().press("2");
        assertThat(page.locator("input[data-digit='2']").isChecked()).isTrue();
        type("#line0part", "fil");
        PlaywrightAssertions.assertThat(page.locator("#line0part-options [role=option]").first()).isVisible();
        page.keyboard().press("Escape");
        PlaywrightAssertions.assertThat(page.locator("#line0part-options")).isHidden();
        page.keyboard().press("ArrowDown");
        PlaywrightAssertions.assertThat(page.locator("#line0part")).hasAttribute("aria-activedescendant",
                "line0part-option-0");
        page.keyboard().press("Enter");
        String part = page.locator("#line0part").inputValue();
        assertThat(part).contains("filter");
        PlaywrightAssertions.assertThat(page.locator("#line1part")).isVisible();
        // What is typed last comes last: 150.00 + 87.25, and 8.875 % of it.
        PlaywrightAssertions.assertThat(page.locator("#price [role=status]")).containsText("258.31");
        String price = page.locator("#price [role=status]").textContent();
        PlaywrightAssertions.assertThat(page.locator("[data-kept]")).containsText("Kept");
        PlaywrightAssertions.assertThat(page.locator("#understood-day")).hasText(weekday + ", May " + day + ", 2026");

        page.locator("button[lang=es]").click();
        PlaywrightAssertions.assertThat(page.locator("html")).hasAttribute("lang", "es");
        assertThat(page.locator("#line0part").inputValue()).isEqualTo(part);
        assertThat(page.locator("#person0to").inputValue()).isEqualTo("11:00");
        assertThat(violations("a draft", new AxeBuilder(page).withTags(RULES))).isEmpty();
        page.close();
        page = window.newPage();
        page.navigate(office.address() + "/visits");
        page.locator(".begun a").click();
        assertThat(page.locator("#line0part").inputValue()).isEqualTo(part);
        assertThat(page.locator("#price [role=status]").textContent()).isEqualTo(price);
        page.locator("#line0part").focus();
        page.keyboard().press("Control+Enter");

        page.waitForURL("**/visits/hotel-fernhill-2026-05-" + day);
        assertThat(page.locator("main").textContent()).contains(price);
        page.navigate(office.address() + "/visits");
        assertThat(page.locator(".begun").count()).isZero();
        assertThat(complaints).isEmpty();
    }

    /** What was thrown away in another window is said, stays on the page, and is kept again only by its button. */
    @Test
    void draft_thrownAwayInAnotherWindow_isSaid_andKeptAnewByItsButton() {
        page.navigate(office.address() + "/sites/crumb-lane-bakery/visit");
        page.locator("#askedBy").evaluate("field => field.closest('details').open = true");
        page.locator("#askedBy").fill("Mrs. Baker");
        PlaywrightAssertions.assertThat(page.locator("[data-kept]")).containsText("Kept");
        Page other = window.newPage();
        other.navigate(office.address() + "/visits");
        other.locator(".begun button").click();
        other.waitForURL("**/sites/crumb-lane-bakery/visit");

        page.locator("#symptom").fill("Drips.");
        PlaywrightAssertions.assertThat(page.locator("[data-kept]")).containsText("was thrown away meanwhile");
        other.navigate(office.address() + "/visits");
        assertThat(other.locator(".begun").count()).isZero();

        String before = page.url();
        page.locator("button[formaction$='/draft']").click();
        page.waitForURL(address -> !address.equals(before) && address.contains("/visit?draft="));
        assertThat(page.locator("#symptom").inputValue()).isEqualTo("Drips.");
        assertThat(page.locator("#askedBy").inputValue()).isEqualTo("Mrs. Baker");
        other.navigate(office.address() + "/visits");
        other.locator(".begun button").click();
    }

    /** From the telephone to the closed call, and the visit's page asks for nothing that the call has said; all of it by the keyboard alone. */
    @Test
    void call_isTakenPlannedDoneAndClosedByKeyboardAlone() {
        String call = "/calls/hotel-fernhill-2026-12-30";
        page.navigate(office.address() + "/today");
        tabTo("main a[href='/calls/new']");
        page.keyboard().press("Enter");
        page.waitForURL("**/calls/new");
        tabTo("a[href='/calls/new?site=hotel-fernhill']");
        page.keyboard().press("Enter");
        page.waitForURL("**/calls/new?site=hotel-fernhill");
        assertThat(page.locator("main section").textContent()).contains("A-2026-002", "24 h");
        type("#by", "Bram");
        type("#symptom", "No ice since breakfast.");
        tabTo("main form details > summary");
        page.keyboard().press("Enter");
        type("#atTime", "8:30");
        tabTo("main form button.act");
        page.keyboard().press("Enter");
        page.waitForURL("**" + call);
        assertThat(page.locator("main").textContent()).contains("December 31, 2026, 8:30", "still time");

        type("#person", "Ada Quill");
        type("#planTime", "25:00");
        page.keyboard().press("Enter");
        page.waitForURL("**" + call + "/plan");
        assertThat(page.locator("#person").inputValue()).isEqualTo("Ada Quill");
        assertThat(violations("faulty plan", new AxeBuilder(page).withTags(RULES))).isEmpty();
        type("#planTime", "9:30");
        page.keyboard().press("Enter");
        page.locator(".lead:has-text('planned')").waitFor();

        tabTo("a[href='/sites/hotel-fernhill/visit?call=hotel-fernhill-2026-12-30']");
        page.keyboard().press("Enter");
        page.waitForURL("**/visit?call=*");
        assertThat(page.locator("#symptom").inputValue()).isEqualTo("No ice since breakfast.");
        assertThat(page.locator("#askedBy").inputValue()).isEqualTo("Bram");
        assertThat(page.locator("#person0name").inputValue()).isEqualTo("Ada Quill");
        type("#person0from", "9:40");
        type("#person0to", "10:20");
        page.keyboard().press("Control+Enter");
        page.waitForURL("**/visits/hotel-fernhill-2026-12-30");
        tabTo("main a[href='" + call + "']");
        page.keyboard().press("Enter");
        page.waitForURL("**" + call);
        assertThat(page.locator("main").textContent()).contains("1\u00a0h\u00a010\u00a0min; kept");
        tabTo("form[action='" + call + "/close'] button");
        page.keyboard().press("Enter");
        page.locator(".lead:has-text('closed')").waitFor();
        assertThat(violations("closed", new AxeBuilder(page).withTags(RULES))).isEmpty();
        assertThat(complaints).as("but that of the faulty plan").singleElement().asString().contains("422");
    }

    private void type(String field, String text) {
        tabTo(field);
        page.keyboard().press("Control+a");
        page.keyboard().type(text);
    }

    /** A line is ticked, what that comes to is looked at, and it is given back. */
    @ParameterizedTest
    @CsvSource({"en-US, 1100, 1, Credit note", "es-MX, 320, 2, Nota de cr\u00e9dito"})
    void invoice_isGivenBackByKeyboardAlone(String locale, int width, int line, String title) {
        window(locale, width);
        page.navigate(office.address() + "/papers");
        tabTo("a[href='/papers/INV-2026-00001']");
        page.keyboard().press("Enter");
        page.waitForURL("**/papers/INV-2026-00001");
        tabTo("a[href='/papers/INV-2026-00001/credit']");
        page.keyboard().press("Enter");
        page.waitForURL("**/credit");
        tabTo("input[name=line][value='" + line + "']");
        page.keyboard().press("Space");
        type("#reason", "Agreed on the telephone");
        tabTo("main form button");
        page.keyboard().press("Enter");
        page.waitForURL("**/credit/look");
        assertThat(page.locator("#would").textContent()).contains(title);
        tabTo("#would button");
        page.keyboard().press("Enter");

        page.waitForURL("**/papers/CN-*");
        assertThat(page.locator("h1").textContent()).contains(title);
        assertThat(page.locator("main").textContent()).contains("INV-2026-00001");
        assertThat(complaints).isEmpty();
    }

    /** Prices follow every change, the comparison after them; all of it by the keyboard alone. */
    @Test
    void quote_isMadeWhileTheCustomerWaits() {
        page.navigate(office.address() + "/sites/crumb-lane-bakery");
        tabTo("a[href='/sites/crumb-lane-bakery/quote']");
        page.keyboard().press("Enter");
        page.waitForURL("**/crumb-lane-bakery/quote");
        PlaywrightAssertions.assertThat(page.locator("#said")).containsText("1,075.00");
        PlaywrightAssertions.assertThat(page.locator("#ahead svg.drawn[role=img]")).hasCount(2);
        assertThat(violations("quote", new AxeBuilder(page).withTags(RULES))).isEmpty();

        // Slime: 45 minutes more are billed, at 98.00/h 73.50, and the sanitizer is used once more, 1.70: 75.20.
        tabTo("details:has(input[name='found-proof-room']) > summary");
        page.keyboard().press("Enter");
        tabTo("input[name='found-proof-room'][value=slime]");
        page.keyboard().press("Space");
        PlaywrightAssertions.assertThat(page.locator("#ways")).containsText("First-time deep cleaning adds 75.20");
        page.keyboard().press("1");
        PlaywrightAssertions.assertThat(page.locator("#ways")).containsText("No machine is to be looked after");
        page.keyboard().press("1");
        PlaywrightAssertions.assertThat(page.locator("#said")).containsText("1,075.00");

        page.locator("#start").focus();
        tabTo("button[data-main]");
        page.keyboard().press("Enter");
        page.waitForURL("**/quotes/MQ-*");
        assertThat(page.locator("main").textContent()).contains("1,075.00", "75.20");
        assertThat(violations("issued", new AxeBuilder(page).withTags(RULES))).isEmpty();
        assertThat(complaints).isEmpty();
    }

    @Test
    void quote_inSpanishOnATelephone_isForEveryone() {
        window("es-MX", 320);
        page.navigate(office.address() + "/sites/crumb-lane-bakery/quote?start=2027-01-01&machine=proof-room"
                + "&minutes-full-clean=90&owner=yes&reach=proof-room&water-usual.by6=x");
        assertThat(page.locator("#error-water-usual\\.by6-0").count()).isEqualTo(1);
        assertThat(violations("faulty quote", new AxeBuilder(page).withTags(RULES))).isEmpty();
        page.navigate(office.address() + "/sites/crumb-lane-bakery/quote?start=2027-01-01&machine=proof-room"
                + "&minutes-full-clean=90&owner=yes");
        PlaywrightAssertions.assertThat(page.locator("#ahead svg.drawn[role=img]")).hasCount(2);
        assertThat(page.locator("#ways").textContent()).contains("Margen");
        assertThat(violations("quote", new AxeBuilder(page).withTags(RULES))).isEmpty();
        assertThat(page.evaluate("() => document.documentElement.scrollWidth <= innerWidth")).isEqualTo(true);
    }

    private int invoices() {
        return (int) page.evaluate("async () => (await (await fetch('/papers?kind=invoice',"
                + " {headers: {Accept: 'application/json'}})).json()).papers.length");
    }

    /** From a paper over the mail as it would go out to a real server, and back to the paper. */
    @Test
    void paper_isMailedFromItsPage_andSaysSo() throws Exception {
        run("contact", "add", "Mara Voss", "--customer", "pennon-wharf-taproom", "--for", "bills", "--email",
                "mara@pennon.example");
        Path settings = office.shop().resolve("shop.yaml");
        String before = Files.readString(settings);
        GreenMail server = new GreenMail(new ServerSetup(0, "127.0.0.1", ServerSetup.PROTOCOL_SMTP));
        server.start();
        try {
            Files.writeString(settings, before + "\nmail:\n  server: {host: localhost, port: "
                    + server.getSmtp().getPort() + ", security: plain}\n");
            page.navigate(office.address() + "/papers/INV-2026-00001");
            page.locator("a[href='/papers/INV-2026-00001/mail']").click();
            PlaywrightAssertions.assertThat(page.locator("main")).containsText("Mara Voss <mara@pennon.example>");
            assertThat(server.getReceivedMessages()).isEmpty();
            page.locator("main form button").click();
            page.waitForURL("**/mail/INV-2026-00001.m1");
            assertThat(violations("a mail", new AxeBuilder(page).withTags(RULES))).isEmpty();
            page.locator("form[action='/mail'] button").click();
            PlaywrightAssertions.assertThat(page.locator("main")).containsText("INV-2026-00001.m1: went out");

            assertThat(server.getReceivedMessages()).singleElement()
                    .satisfies(mail -> assertThat(mail.getSubject()).contains("Invoice INV-2026-00001"));
            page.navigate(office.address() + "/papers/INV-2026-00001");
            PlaywrightAssertions.assertThat(page.locator("main")).containsText("went out, Mara Voss");
            assertThat(violations("a mailed paper", new AxeBuilder(page).withTags(RULES))).isEmpty();
        } finally {
            server.stop();
            Files.writeString(settings, before);
        }
        assertThat(complaints).isEmpty();
    }

    @Test
    void language_isChosenOnThePageThatIsSeen() {
        page.navigate(office.address() + "/papers");
        page.locator("button[lang=es]").click();

        PlaywrightAssertions.assertThat(page.locator("html")).hasAttribute("lang", "es");
        assertThat(page.url()).isEqualTo(office.address() + "/papers");
        page.navigate(office.address() + "/sites");
        assertThat(page.locator("html").getAttribute("lang")).isEqualTo("es");
    }

    private static void run(String... words) {
        List<String> line = new ArrayList<>(List.of(words));
        line.addAll(List.of("--shop", office.shop().toString()));
        StringWriter told = new StringWriter();
        int status = Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(told)).setErr(new PrintWriter(told))
                .execute(line.toArray(String[]::new));
        assertThat(status).as(line + told.toString()).isZero();
    }
}
