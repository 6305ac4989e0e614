package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may come in. */
class DoorTest {

    @TempDir
    private static Path folder;
    private static OpenOffice office;

    @BeforeAll
    static void open() {
        office = OpenOffice.of(DemoShop.in(folder.resolve("shop")));
    }

    @AfterAll
    static void close() {
        office.close();
    }

    @Test
    void link_usedTwice_letsOneIn() {
        String link = office.server().link();
        Visitor owner = office.stranger().enter(link);

        assertThat(owner.get("/today").statusCode()).isEqualTo(200);
        assertThat(office.stranger().get(path(link)).statusCode()).isEqualTo(403);
        assertThat(owner.get("/today").statusCode()).isEqualTo(200);
    }

    @Test
    void link_afterANewerOne_letsNobodyIn() {
        String older = office.server().link();
        String newer = office.server().link();

        assertThat(office.stranger().get(path(older)).statusCode()).isEqualTo(403);
        assertThat(office.stranger().enter(newer).get("/today").statusCode()).isEqualTo(200);
    }

    @Test
    void link_guessedNineTimes_stillLetsItsOwnerIn() {
        String link = office.server().link();
        guess(9);

        assertThat(office.stranger().get(path(link)).statusCode()).isEqualTo(200);
    }

    @Test
    void link_guessedTenTimes_isDead() {
        String link = office.server().link();
        guess(10);

        assertThat(office.stranger().get(path(link)).statusCode()).isEqualTo(403);
        assertThat(office.owner().get("/today").statusCode()).isEqualTo(200);
    }

    private static void guess(int times) {
        for (int i = 0; i < times; i++) {
            HttpResponse<String> refused = office.stranger().get("/enter?key=guess" + i);
            assertThat(refused.statusCode()).isEqualTo(403);
            assertThat(refused.headers().firstValue("Set-Cookie")).isEmpty();
        }
    }

    @Test
    void links_ofTwoThings_haveNothingInCommon() {
        assertThat(office.server().link()).matches("http://127\\.0\\.0\\.1:[0-9]+/enter\\?key=[A-Za-z0-9_-]{43}")
                .isNotEqualTo(office.server().link());
    }

    @Test
    void sessionCookie_isForThisOfficeAndNoScript() {
        String cookie = office.stranger().get(path(office.server().link())).headers().firstValue("Set-Cookie")
                .orElseThrow();

        assertThat(cookie).matches("icequill-" + office.port() + "=[A-Za-z0-9_-]{43}; .*");
        assertThat(List.of(cookie.split("; "))).contains("Path=/", "HttpOnly", "SameSite=Strict")
                .noneMatch(part -> part.startsWith("Domain") || part.startsWith("Max-Age")
                        || part.startsWith("Expires"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/today", "/sites", "/papers", "/papers/INV-2026-00001/pdf", "/shop", "/nowhere"})
    void stranger_isToldNothing(String path) {
        HttpResponse<String> answer = office.stranger().get(path);

        assertThat(answer.statusCode()).isEqualTo(401);
        assertThat(answer.body()).doesNotContain("Alderton", "Hotel", "<nav");
    }

    @Test
    void cookieThatTheVisitorChose_opensNothing() {
        String chosen = "icequill-" + office.port() + "=" + "a".repeat(43);
        Visitor fixed = new Visitor(office.address(), Optional.of(chosen));

        assertThat(fixed.get("/today").statusCode()).isEqualTo(401);
        Visitor entered = fixed.enter(office.server().link());
        assertThat(entered.cookie()).isNotEqualTo(fixed.cookie());
        assertThat(fixed.get("/today").statusCode()).isEqualTo(401);
        assertThat(entered.get("/today").statusCode()).isEqualTo(200);
    }

    @Test
    void sessionOfAnotherOffice_opensNothing(@TempDir Path other) {
        try (OpenOffice second = OpenOffice.of(DemoShop.in(other))) {
            String value = second.owner().cookie().orElseThrow().replaceFirst(".*=", "");

            assertThat(new Visitor(office.address(), Optional.of("icequill-" + office.port() + "=" + value))
                    .get("/today").statusCode()).isEqualTo(401);
        }
    }

    @ParameterizedTest
    @CsvSource({"127.0.0.1:PORT, 200", "localhost:PORT, 200", "[::1]:PORT, 200", "evil.example:PORT, 421",
            "127.0.0.1, 421", "127.0.0.1:1, 421", "127.0.0.1.evil.example:PORT, 421", "localhost.:PORT, 421",
            "0.0.0.0:PORT, 421", "'', 400"})
    void host_ofAnotherName_isRefused(String host, int status) {
        String answer = office.raw("GET /today HTTP/1.1\r\nHost: " + host.replace("PORT", "" + office.port())
                + "\r\nCookie: " + office.owner().cookie().orElseThrow() + "\r\nConnection: close\r\n\r\n");

        assertThat(answer).startsWith("HTTP/1.1 " + status + " ");
    }

    @Test
    void host_ofAnotherName_doesNotSpendTheLink() {
        String link = office.server().link();

        assertThat(office.raw("GET " + path(link) + " HTTP/1.1\r\nHost: evil.example:" + office.port()
                + "\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 421 ").doesNotContain("Set-Cookie");
        assertThat(office.stranger().enter(link).get("/today").statusCode()).isEqualTo(200);
    }

    /** Chooses a language, which needs no key: it changes nothing but the session. */
    @ParameterizedTest
    @CsvSource({"Sec-Fetch-Site, same-origin, 303", "Sec-Fetch-Site, same-site, 403", "Sec-Fetch-Site, cross-site, 403",
            "Sec-Fetch-Site, none, 403", "Origin, OWN, 303", "Origin, http://evil.example, 403", "Origin, null, 403",
            "Origin, http://127.0.0.1:1, 403", "X-Nothing, at-all, 403"})
    void post_ofAnotherSite_isRefused(String header, String value, int status) {
        Visitor owner = office.owner();

        assertThat(owner.post("/language", Map.of("language", "es"),
                List.of(header, value.replace("OWN", office.address()))).statusCode()).isEqualTo(status);
        assertThat(owner.get("/today").body()).contains("<html lang=\"" + (status == 303 ? "es" : "en") + "\"");
    }

    /** Where both are sent a lying Origin must not pass for the browser's own word. */
    @Test
    void post_crossSiteWithOurOrigin_isRefused() {
        assertThat(office.owner().post("/language", Map.of("language", "es"),
                List.of("Sec-Fetch-Site", "cross-site", "Origin", office.address())).statusCode()).isEqualTo(403);
    }

    @ParameterizedTest
    @CsvSource({"/sites, /sites", "//evil.example, /today", "https://evil.example, /today", "/\\evil.example, /today",
            "javascript:alert(1), /today", "'/sites?find=a b', /today"})
    void language_leadsBackToOwnPagesOnly(String back, String goes) {
        HttpResponse<String> answer = office.owner().post("/language", Map.of("language", "es", "back", back));

        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location")).contains(goes);
    }

    @Test
    void manyLinks_letTheOldestSessionGo() {
        Visitor first = office.owner();
        for (int i = 0; i < 100; i++) {
            office.owner();
        }

        assertThat(first.get("/today").statusCode()).isEqualTo(401);
    }

    private static String path(String link) {
        return link.substring(link.indexOf("/enter"));
    }
}
