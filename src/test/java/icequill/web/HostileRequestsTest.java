package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.cli.Main;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is asked for to do harm. */
@Tag("wide")
class HostileRequestsTest {

    private static final String VISIT = "/visits/ten-minute-brushing";
    private static final String ISSUE = VISIT + "/issue";
    private static final int MILLION = 1_000_000;
    private static final List<String> HEADERS = List.of("content-security-policy", "x-content-type-options",
            "referrer-policy", "cross-origin-opener-policy", "cross-origin-resource-policy", "permissions-policy",
            "cache-control");

    @TempDir
    private static Path folder;
    private static OpenOffice office;
    private static Visitor owner;

    @BeforeAll
    static void open() {
        office = OpenOffice.withVisits(folder.resolve("shop"), "ten-minute-brushing", "late-call", "clock-change");
        owner = office.owner();
        assertThat(owner.post("/visits/late-call/issue", Map.of("key", owner.key("/visits/late-call"))).statusCode())
                .isEqualTo(303);
    }

    @AfterAll
    static void close() {
        office.close();
    }

    @BeforeEach
    void forget() {
        office.faults().clear();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/papers/..%2F..%2Fshop.yaml/pdf", "/papers/..%2f..%2fshop.yaml", "/papers/../../shop.yaml",
            "/papers/%2e%2e/%2e%2e/shop.yaml/pdf", "/papers/..%5c..%5cshop.yaml/pdf", "/papers/shop.yaml",
            "/papers/%2Fetc%2Fpasswd", "/papers/%2Fetc%2Fpasswd/pdf", "/papers/a%00b", "/papers/a%00b/pdf",
            "/papers/pom.xml", "/papers/pricing.yaml", "/visits/a%00b", "/visits/shop.yaml", "/sites/..%2f..%2fetc",
            "/sites/a%00b", "/assets/0000000000000000/office.css", "/assets/..%2f..%2f/office.css",
            "/assets/../shop.yaml", "/assets/x/..;/office.css", "/papers/%c0%ae%c0%ae", "/papers/%",
            "/papers/INV-2026-00001%0d%0aX-Evil:1/pdf"})
    void pathOfAnotherFile_findsNothing(String path) {
        String answer = asked(path);

        assertThat(answer).matches("(?s)HTTP/1.1 4[0-9][0-9] .*").doesNotContain("root:", "formats:")
                .doesNotContain("Quillwater Ice Machine Care, ");
        assertThat(office.faults()).isEmpty();
        assertGuarded(answer);
    }

    /** A name of a file that is there is no paper: forms are read of the book alone. */
    @Test
    void paper_namedLikeAFormOfTheDisk_isNotRead() throws IOException {
        Path form = Files.writeString(Path.of("target/here.yaml"), "id: INV-2026-00001\n");
        try {
            assertThat(owner.get("/papers/target%2Fhere.yaml").statusCode()).isBetween(400, 499);
            assertThat(owner.get("/papers/" + form.getFileName()).statusCode()).isEqualTo(404);
        } finally {
            Files.delete(form);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"/sites?find=%00", "/papers?find=%00", "/papers?find=%27%22%25_%5C",
            "/papers?month=2026-13",
            "/papers?month=x", "/papers?kind=nonsense", "/papers?state=nonsense", "/papers?store=%00",
            "/visits?month=99",
            "/visits?state=nonsense", "/visits?site=%00", "/visits?customer=no-such", "/visits?machine=x",
            "/visits?by=x",
            "/sites/hotel-fernhill?month=2026-00", "/sites/hotel-fernhill?machine=no-such", "/sites?find=%F0%9F%A7%8A",
            "/sites?find=%ff%fe", "/sites?find=%", "/sites?find&find=&=x&&", "/papers?find=99999999999999999999",
            "/papers/99999999999999999999", "/papers/%20", "/visits/%20", "/sites/%20", "/sites/x%3Cscript%3E"})
    void nonsenseInAnAddress_isNoFault(String path) {
        String answer = asked(path);

        assertThat(answer).as(path).matches("(?s)HTTP/1.1 [24][0-9][0-9] .*");
        assertThat(office.faults()).isEmpty();
        assertGuarded(answer);
    }

    @Test
    void form_thatIsTooLarge_isRefusedWhetherItSaysSoOrNot() {
        String key = owner.key(VISIT);
        String large = "key=" + key + "&notes=" + "x".repeat(MILLION);

        assertThat(owner.post(ISSUE, BodyPublishers.ofString(large), Visitor.OWN_PAGE).statusCode()).isEqualTo(413);
        assertThat(owner.post(ISSUE, BodyPublishers.fromPublisher(BodyPublishers.ofString(large)), Visitor.OWN_PAGE)
                .statusCode()).isEqualTo(413);
        String answer = office.raw(head("POST", ISSUE) + "Content-Length: 9999999999\r\n\r\nkey=");
        assertThat(answer).startsWith("HTTP/1.1 413");
        assertGuarded(answer);
        assertThat(owner.get(VISIT).body()).contains("name=\"key\"");
    }

    @Test
    void form_withManyFields_isNoFault() {
        assertThat(
                owner.post(ISSUE, BodyPublishers.ofString("a=1&".repeat(MILLION / 8)), Visitor.OWN_PAGE).statusCode())
                .isEqualTo(403);
        assertThat(owner.post(ISSUE, BodyPublishers.ofString("%=%&&=%zz"), Visitor.OWN_PAGE).statusCode())
                .isBetween(400, 499);
        assertThat(office.faults()).isEmpty();
    }

    /** Fields in parts, as files are sent, are no form of ours; nothing of them may be laid down on the disk. */
    @Test
    void form_inParts_isRefused() {
        String part = "--x\r\nContent-Disposition: form-data; name=\"key\"; filename=\"../../evil\"\r\n\r\nbody\r\n--x--\r\n";
        String answer = office
                .raw(head("POST", ISSUE) + "Content-Type: multipart/form-data; boundary=x\r\nContent-Length: "
                        + part.length() + "\r\n\r\n" + part);

        assertThat(answer).matches("(?s)HTTP/1.1 4[0-9][0-9] .*");
        assertThat(office.faults()).isEmpty();
        assertGuarded(answer);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "NONSENSE"})
    void otherMethod_isRefused(String method) {
        String answer = office.raw(head(method, "/today") + "Content-Length: 0\r\n\r\n");

        assertThat(answer).matches("(?s)HTTP/1.1 4[0-9][0-9] .*").doesNotContain("Alderton");
        assertThat(office.faults()).isEmpty();
    }

    @Test
    void requestLineOrHeadersThatAreTooLong_areRefused() {
        String long_ = "x".repeat(MILLION / 10);
        assertThat(office.raw("GET /sites?find=" + long_ + " HTTP/1.1\r\nHost: x\r\n\r\n")).startsWith("HTTP/1.1 414");
        assertThat(office.raw(head("GET", "/today") + "X-Long: " + long_ + "\r\n\r\n")).startsWith("HTTP/1.1 431");
        assertThat(owner.get("/today").statusCode()).isEqualTo(200);
    }

    /** None of them ends what it began; all others are answered meanwhile. */
    @Test
    void slowVisitors_keepNobodyWaiting() throws IOException {
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 100; i++) {
                slow.add(begun("GET /today HTTP/1.1\r\nHost: 127.0.0.1"));
            }
            for (int i = 0; i < 10; i++) {
                slow.add(begun(head("POST", ISSUE) + "Content-Length: 500\r\n\r\nkey="));
            }
            assertThat(owner.get("/today").statusCode()).isEqualTo(200);
            assertThat(owner.post("/language", Map.of("language", "en")).statusCode()).isEqualTo(303);
            assertThat(owner.post("/visits/clock-change/issue", Map.of("key", owner.key("/visits/clock-change")))
                    .statusCode()).isEqualTo(303);
        } finally {
            for (Socket socket : slow) {
                socket.close();
            }
        }
    }

    private static Socket begun(String request) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), office.port());
        socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
        socket.getOutputStream().flush();
        return socket;
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/today", "/sites/hotel-fernhill", "/papers/INV-2026-00001",
            "/papers/INV-2026-00001/pdf",
            "/nowhere", "/sites/no-such-site", "/enter?key=wrong", "/assets/wrong/office.css", "/visits?month=x"})
    void everyAnswer_isGuarded(String path) {
        assertGuarded(asked(path));
        assertGuarded(office.raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + office.port()
                + "\r\nConnection: close\r\n\r\n"));
        assertGuarded(office.raw("GET " + path + " HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n"));
    }

    @Test
    void pages_areKeptByNobodyAndStylesForGood() {
        String style = owner.get("/today").body().replaceAll("(?s).*href=\"(/assets/[^\"]+)\".*", "$1");

        assertThat(owner.get("/today").headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(owner.get("/papers/INV-2026-00001/pdf").headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(office.stranger().get(style).headers().firstValue("Cache-Control"))
                .contains("public, max-age=31536000, immutable");
    }

    @Test
    void policy_hasNoHole() {
        String policy = owner.get("/today").headers().firstValue("Content-Security-Policy").orElseThrow();

        assertThat(policy).contains("default-src 'none'", "script-src 'self'", "style-src 'self'", "base-uri 'none'",
                "form-action 'self'").doesNotContain("unsafe", "*", "data:", "http");
    }

    /** The file is called as its paper is, however it was asked for. */
    @Test
    void pdf_isNamedByItsPaper() {
        HttpResponse<String> pdf = owner.get("/papers/inv%202026%201.pdf/pdf");

        assertThat(pdf.statusCode()).isEqualTo(200);
        assertThat(pdf.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(pdf.headers().firstValue("Content-Disposition")).contains("inline; filename=\"INV-2026-00001.pdf\"");
    }

    /** A book that somebody broke: the page tells a number, and the log what it stands for. */
    @Test
    void fault_tellsANumberAndNoMore(@TempDir Path other) throws SQLException {
        try (OpenOffice broken = OpenOffice.of(DemoShop.in(other.resolve("shop")))) {
            Visitor visitor = broken.owner();
            try (Connection book = DriverManager.getConnection("jdbc:sqlite:" + other.resolve("shop/book/book.sqlite"));
                    Statement statement = book.createStatement()) {
                statement.execute("PRAGMA foreign_keys = OFF");
                statement.execute("DROP TABLE visit");
            }
            HttpResponse<String> answer = visitor.get("/visits");

            assertThat(answer.statusCode()).isEqualTo(500);
            assertThat(answer.body().toLowerCase(Locale.ROOT)).contains("<h1>")
                    .doesNotContain("exception", "at icequill", "sql", ".java");
            assertThat(broken.faults()).hasSize(1);
            String number = broken.faults().getFirst().replaceFirst("Fault ([0-9a-f]+) at /visits: (?s).*", "$1");
            assertThat(answer.body()).contains(number);
            assertThat(answer.headers().map().keySet()).containsAll(HEADERS);
            broken.faults().clear();
        }
    }

    /** Names as whoever means harm would choose them, in every field that pages show. */
    @Test
    void markup_inWhatWasTyped_staysText(@TempDir Path other) {
        String evil = "\"'><script>alert(1)</script>&<img src=x onerror=alert(1)>";
        Path shop = DemoShop.in(other.resolve("shop"));
        run(shop, "site", "change", "hotel-fernhill", "--name", evil, "--parking", evil, "--notes", evil);
        run(shop, "customer", "change", "fernhill-hotels", "--name", evil);
        run(shop, "machine", "change", "hotel-fernhill", "lobby-bar", "--where", evil, "--model", evil,
                "--condition", evil);
        try (OpenOffice open = OpenOffice.of(shop)) {
            Visitor visitor = open.owner();
            for (String path : List.of("/today", "/sites", "/sites/hotel-fernhill", "/visits", "/papers",
                    "/sites?find=%22%27%3E%3Cscript%3Ealert(1)%3C/script%3E",
                    "/papers?find=%22%27%3E%3Cscript%3Ealert(1)%3C/script%3E&store=%22%3E%3Cscript%3E&month=%22%3E%3Cscript%3E",
                    "/visits?month=%22%3E%3Cscript%3E", "/visits?site=%3Cscript%3E")) {
                HttpResponse<String> page = visitor.get(path);
                assertThat(page.body()).as(path).doesNotContain("<script>", "<img", "\"'>");
            }
            assertThat(visitor.get("/sites/hotel-fernhill").body()).contains("&lt;script&gt;");
        }
    }

    private static void run(Path shop, String... words) {
        List<String> line = new ArrayList<>(List.of(words));
        line.addAll(List.of("--shop", shop.toString()));
        StringWriter told = new StringWriter();
        int status = Main.commands(OpenOffice.CLOCK).setOut(new PrintWriter(told)).setErr(new PrintWriter(told))
                .execute(line.toArray(String[]::new));
        assertThat(status).as(line + told.toString()).isZero();
    }

    private static String asked(String path) {
        return office.raw(head("GET", path) + "\r\n");
    }

    private static String head(String method, String path) {
        return method + " " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + office.port() + "\r\nCookie: "
                + owner.cookie().orElseThrow() + "\r\nSec-Fetch-Site: same-origin\r\nConnection: close\r\n";
    }

    private static void assertGuarded(String answer) {
        String headers = answer.substring(0, answer.indexOf("\r\n\r\n")).toLowerCase(Locale.ROOT);
        assertThat(headers).doesNotContain("\nx-evil");
        HEADERS.forEach(header -> assertThat(headers).contains("\n" + header + ":"));
        assertThat(headers).doesNotContain("\nserver:", "\nx-powered-by:");
        assertThat(answer).doesNotContain("Exception", "\tat ", "jetty", "Jetty", "Javalin");
    }
}
