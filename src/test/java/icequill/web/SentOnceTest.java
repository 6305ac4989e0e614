package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** A form does its work once, however often it is sent, and only for the session that it was made for. */
@Tag("wide")
class SentOnceTest {

    private static final String VISIT = "/visits/ten-minute-brushing";
    private static final String ISSUE = VISIT + "/issue";

    @TempDir
    private Path folder;
    private OpenOffice office;
    private Visitor owner;

    @BeforeEach
    void open() {
        office = OpenOffice.withVisits(folder.resolve("shop"), "ten-minute-brushing", "late-call");
        owner = office.owner();
    }

    @AfterEach
    void close() {
        office.close();
    }

    @Test
    void form_sentTwice_issuesOneInvoiceAndShowsItTwice() {
        Map<String, String> form = Map.of("key", owner.key(VISIT));

        HttpResponse<String> first = owner.post(ISSUE, form);
        HttpResponse<String> second = owner.post(ISSUE, form);

        assertThat(first.statusCode()).as(first.body()).isEqualTo(303);
        assertThat(second.statusCode()).isEqualTo(303);
        assertThat(first.headers().firstValue("Location")).contains("/papers/INV-2026-00001");
        assertThat(second.headers().firstValue("Location")).contains("/papers/INV-2026-00001");
        assertThat(owner.get("/papers/INV-2026-00001").statusCode()).isEqualTo(200);
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    @Test
    void form_sentOfTwoWindows_issuesOneInvoice() {
        String one = owner.key(VISIT);
        String other = owner.key(VISIT);
        assertThat(one).isNotEqualTo(other);

        assertThat(owner.post(ISSUE, Map.of("key", one)).statusCode()).isEqualTo(303);
        HttpResponse<String> late = owner.post(ISSUE, Map.of("key", other));

        assertThat(late.statusCode()).as(late.body()).isBetween(400, 499);
        assertThat(late.body()).contains("INV-2026-00001");
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    @Test
    void form_sentAgainSayingSomethingElse_isRefused() {
        String key = owner.key(VISIT);
        assertThat(owner.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(303);

        assertThat(owner.post(ISSUE, Map.of("key", key, "more", "words")).statusCode()).isEqualTo(409);
        assertThat(owner.post("/visits/late-call/issue", Map.of("key", key)).statusCode()).isEqualTo(409);
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    /** What could not be done is not remembered: the same form may be sent again once the reason is gone. */
    @Test
    void form_thatFailed_mayBeSentAgain() {
        String key = owner.key(VISIT);

        HttpResponse<String> failed = owner.post("/visits/no-such-visit/issue", Map.of("key", key));
        assertThat(failed.statusCode()).as(failed.body()).isBetween(400, 499);
        assertThat(owner.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(303);
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    @Test
    void form_sentByManyAtOnce_issuesOneInvoice() throws InterruptedException, ExecutionException {
        int senders = 8;
        Map<String, String> form = Map.of("key", owner.key(VISIT));
        CountDownLatch start = new CountDownLatch(1);
        try (ExecutorService threads = Executors.newFixedThreadPool(senders)) {
            List<Future<HttpResponse<String>>> answers = new ArrayList<>();
            for (int i = 0; i < senders; i++) {
                answers.add(threads.submit(() -> {
                    start.await();
                    return owner.post(ISSUE, form);
                }));
            }
            start.countDown();
            for (Future<HttpResponse<String>> answer : answers) {
                assertThat(answer.get().statusCode()).as(answer.get().body()).isEqualTo(303);
                assertThat(answer.get().headers().firstValue("Location")).contains("/papers/INV-2026-00001");
            }
        }
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    /** Two windows whose forms have keys of their own. */
    @Test
    void twoForms_atOnce_issueOneInvoice() throws InterruptedException, ExecutionException {
        List<Map<String, String>> forms = List.of(Map.of("key", owner.key(VISIT)), Map.of("key", owner.key(VISIT)));
        CountDownLatch start = new CountDownLatch(1);
        try (ExecutorService threads = Executors.newFixedThreadPool(forms.size())) {
            List<Future<Integer>> answers = new ArrayList<>();
            for (Map<String, String> form : forms) {
                answers.add(threads.submit(() -> {
                    start.await();
                    return owner.post(ISSUE, form).statusCode();
                }));
            }
            start.countDown();
            List<Integer> statuses = List.of(answers.get(0).get(), answers.get(1).get());
            assertThat(statuses).contains(303).allMatch(status -> status == 303 || (status >= 400 && status < 500));
            assertThat(statuses.stream().filter(status -> status == 303)).hasSize(1);
        }
        assertThat(invoices(owner)).containsExactly("INV-2026-00001");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "forged", "NO-DOT", "SWAPPED", "CHANGED"})
    void form_whoseKeyIsNotOfThisSession_isRefused(String forged) {
        String key = owner.key(VISIT);
        String sent = switch (forged) {
        case "forged" -> "a".repeat(43) + "." + "b".repeat(43);
        case "NO-DOT" -> key.replace(".", "");
        case "SWAPPED" -> key.substring(0, 44) + owner.key(VISIT).substring(44);
        case "CHANGED" -> (key.startsWith("A") ? "B" : "A") + key.substring(1);
        default -> forged;
        };

        assertThat(owner.post(ISSUE, Map.of("key", sent)).statusCode()).isEqualTo(403);
        assertThat(owner.post(ISSUE, Map.of()).statusCode()).isEqualTo(403);
        assertThat(invoices(owner)).isEmpty();
    }

    @Test
    void form_ofAnotherSession_isRefused() {
        String key = owner.key(VISIT);
        Visitor other = office.owner();

        assertThat(other.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(403);
        assertThat(invoices(owner)).isEmpty();
    }

    @Test
    void form_ofAnotherSite_isRefusedWithItsRightKey() {
        Map<String, String> form = Map.of("key", owner.key(VISIT));

        assertThat(owner.post(ISSUE, form, List.of("Sec-Fetch-Site", "cross-site")).statusCode()).isEqualTo(403);
        assertThat(owner.post(ISSUE, form, List.of("Origin", "http://evil.example")).statusCode()).isEqualTo(403);
        assertThat(owner.post(ISSUE, form, List.of()).statusCode()).isEqualTo(403);
        assertThat(office.stranger().post(ISSUE, form).statusCode()).isEqualTo(401);
        assertThat(invoices(owner)).isEmpty();
    }

    /** Looking never does what a form does. */
    @Test
    void address_ofAForm_lookedAt_showsItsVisitAndDoesNothing() {
        HttpResponse<String> looked = owner.get(ISSUE + "?key=" + owner.key(VISIT));

        assertThat(looked.statusCode()).isEqualTo(303);
        assertThat(looked.headers().firstValue("Location")).contains(VISIT);
        assertThat(invoices(owner)).isEmpty();
    }

    /** The browser still shows the page of before, whose session is gone with the program that knew it. */
    @Test
    void form_sentAfterTheOfficeWasOpenedAgain_isRefusedAndTheInvoiceIsThereOnce() {
        String key = owner.key(VISIT);
        assertThat(owner.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(303);
        office.close();

        try (OpenOffice again = OpenOffice.of(office.shop())) {
            Visitor before = new Visitor(again.address(), owner.cookie());
            Visitor now = again.owner();

            assertThat(before.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(401);
            assertThat(now.post(ISSUE, Map.of("key", key)).statusCode()).isEqualTo(403);
            assertThat(invoices(now)).containsExactly("INV-2026-00001");
            assertThat(now.get(VISIT).body()).contains("INV-2026-00001").doesNotContain("name=\"key\"");
        }
    }

    private static List<String> invoices(Visitor visitor) {
        List<String> numbers = new ArrayList<>();
        for (JsonNode paper : visitor.json("/papers?kind=invoice").path("papers")) {
            numbers.add(paper.path("number").asString());
        }
        return numbers;
    }
}
