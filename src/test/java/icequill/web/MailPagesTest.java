package icequill.web;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.FinishedDemo;
import icequill.mail.DeliveryReport;
import icequill.mail.RawMail;
import icequill.office.mail.SendingOffice;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.filespecification.PDComplexFileSpecification;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Papers that go out by mail, from pages: shown as they would go out, then written; what comes back is handed over. */
@Tag("wide")
class MailPagesTest {

    private static final String BAKERY = "crumb-lane-bakery";
    /** Kinds of papers that bear no number, but for the notice of renewal, which the law of the demo's places does not count by mail. */
    private static final List<String> LOOSE = List.of("/customers/" + BAKERY + "/statement",
            "/customers/mercado-del-mar/reminder", "/agreements/A-2026-004/paper",
            "/visits/spring-cleaning-bakery/record", "/visits/summer-cleaning-bakery/announcement");

    @TempDir
    private Path folder;

    /** Whatever the shop pays for an hour, no mail says it, nor anything that lies in a file that goes along. */
    @Test
    void noMailOfAnyKind_saysWhatWorkCostsTheShop() throws IOException {
        Path shop = FinishedDemo.copy(folder.resolve("shop"));
        Path labor = shop.resolve("pricing/labor.yaml");
        Files.writeString(labor, Files.readString(labor).replaceAll("wage: [0-9.]+", "wage: 4711.46"));
        try (OpenOffice office = OpenOffice.of(shop)) {
            Visitor owner = office.owner();
            person(owner, BAKERY, "visits");
            person(owner, "mercado-del-mar", "bills");
            LOOSE.forEach(path -> loose(owner, path));
            String days = "/mail/write?from=2026-01-01&until=2026-12-31";
            JsonNode plan = owner.json(days);
            assertThat(plan.path("mails").size() + plan.path("leftOut").size()).isGreaterThan(10);
            assertThat(plan.path("leftOut").valueStream()).allSatisfy(left -> assertThat(
                    left.path("problems").get(0).path("message").asString()).contains("nobody with a mail address"));
            assertThat(write(owner, days, plan.path("mails")).headers().firstValue("Location")).contains("/mail");

            assertThat(SendingOffice.of(shop, OpenOffice.CLOCK).due()
                    .then(due -> SendingOffice.of(shop, OpenOffice.CLOCK).send(due, mail -> true)).orElseThrow()
                    .mails()).hasSize(LOOSE.size() + plan.path("mails").size());
        }
        try (Stream<Path> drafts = Files.list(shop.resolve("outbox"))) {
            assertThat(drafts.toList()).hasSizeGreaterThan(10).allSatisfy(draft -> assertThat(all(draft))
                    .doesNotContain("4711", "4,711", "4.711", "\"cost\"", "owner.").doesNotContainIgnoringCase("wage")
                    .doesNotContainIgnoringCase("markup").doesNotContainIgnoringCase("margin"));
        }
    }

    private static void person(Visitor owner, String customer, String purpose) {
        String path = "/customers/" + customer + "/mail";
        assertThat(owner.post(path, Map.of("key", owner.key(path), "name-0", "Ola Brandt", "email-0",
                "ola@crumblane.example", "for-0", purpose)).statusCode()).isEqualTo(303);
    }

    /** A mail about one, as it is shown before it is written and as it is then; the same is not written twice. */
    private static void loose(Visitor owner, String path) {
        JsonNode shown = owner.json(path + "/mail");
        assertThat(shown.path("problems")).as(path).isEmpty();
        assertThat(owner.get(path).headers().firstValue("Content-Type")).contains("application/pdf");
        HttpResponse<String> done = owner.post(path + "/mail", Map.of("key", owner.key(path + "/mail")));
        String id = shown.path("mail").path("mail").asString();
        assertThat(done.headers().firstValue("Location")).as(done.body()).contains("/mail/" + id);
        JsonNode mail = owner.json("/mail/" + id);
        assertThat(mail.path("copy")).isEqualTo(shown.path("copy"));
        assertThat(mail.path("messageId")).isEqualTo(shown.path("messageId"));
        assertThat(owner.json(path + "/mail").path("problems").get(0).path("message").asString())
                .isEqualTo("mail " + id + " is about it already");
    }

    private static HttpResponse<String> write(Visitor owner, String page, JsonNode mails) {
        return owner.post("/mail/write", BodyPublishers.ofString("key=" + owner.key(page) + mails.valueStream()
                .map(mail -> "&paper=" + mail.path("paper").asString()).collect(Collectors.joining())),
                Visitor.OWN_PAGE);
    }

    /** Subject, text, and whatever can be read in what goes along. */
    private static String all(Path draft) throws IOException {
        RawMail mail = RawMail.of(Files.readString(draft));
        StringBuilder all = new StringBuilder(mail.words("Subject"));
        for (RawMail part : mail.parts()) {
            all.append('\n').append(part.field("Content-Type").startsWith("application/pdf")
                    ? pdf(part.content())
                    : part.text());
        }
        return all.toString();
    }

    private static String pdf(byte[] bytes) throws IOException {
        try (PDDocument document = Loader.loadPDF(bytes)) {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            all.writeBytes(new PDFTextStripper().getText(document).getBytes(StandardCharsets.UTF_8));
            for (PDComplexFileSpecification file : document.getDocumentCatalog().getNames().getEmbeddedFiles()
                    .getNames().values()) {
                all.writeBytes(file.getEmbeddedFile().toByteArray());
            }
            return all.toString(StandardCharsets.UTF_8);
        }
    }

    @Test
    void noticeOfRenewal_saysWhyItIsNotMailed_andWhoHasNoAddressIsToldBeforeAnythingIsWritten() throws IOException {
        Path shop = FinishedDemo.copy(folder.resolve("shop"));
        try (OpenOffice office = OpenOffice.of(shop)) {
            Visitor owner = office.owner();
            assertThat(owner.get("/agreements/A-2026-004/notice/mail").body()).contains("does not count that comes by");
            String nobody = "/visits/late-call/record/mail";
            assertThat(owner.get(nobody).body()).contains("Nobody with a mail address is there for visits");
            Files.deleteIfExists(shop.resolve("papers/record-late-call.pdf"));
            assertThat(owner.post(nobody, Map.of("key", owner.key("/mail/returned"))).statusCode()).isEqualTo(422);
            assertThat(shop.resolve("papers/record-late-call.pdf")).doesNotExist();
            assertThat(owner.get("/customers/nobody/statement/mail").statusCode()).isEqualTo(404);
        }
    }

    /** A report is handed over twice, then lies in the folder too: it is noted once. */
    @Test
    void whatCameBack_isHandedOver_orReadFromTheFolder() throws IOException {
        Path shop = FinishedDemo.copy(folder.resolve("shop"));
        Files.writeString(shop.resolve("shop.yaml"), "\nmail:\n  returned: returned\n", StandardOpenOption.APPEND);
        Files.createDirectories(shop.resolve("returned"));
        try (OpenOffice office = OpenOffice.of(shop)) {
            Visitor owner = office.owner();
            String path = "/customers/" + BAKERY + "/statement/mail";
            owner.post(path, Map.of("key", owner.key(path)));
            String mail = "statement-" + BAKERY + "-2026-12-30.m1";
            SendingOffice.of(shop, OpenOffice.CLOCK).send(List.of(mail), one -> true);
            owner.post("/mail/" + mail, Map.of("key", owner.key("/mail/" + mail), "what", "went-out"));
            String report = DeliveryReport.of(owner.json("/mail/" + mail).path("messageId").asString());

            assertThat(handed(owner, report)).containsExactly(mail + " returned");
            assertThat(handed(owner, report)).isEmpty();
            Files.writeString(shop.resolve("returned/1.eml"), report);
            assertThat(run(owner, owner.post("/mail/returned", Map.of("key", owner.key("/mail/returned"), "folder",
                    "yes")))).isEmpty();
            assertThat(owner.post("/mail/returned", Map.of("key", owner.key("/mail/returned"))).body())
                    .contains("No file was chosen");
        }
    }

    private static List<String> handed(Visitor owner, String report) {
        String body = "--b\r\nContent-Disposition: form-data; name=\"key\"\r\n\r\n" + owner.key("/mail/returned")
                + "\r\n--b\r\nContent-Disposition: form-data; name=\"files\"; filename=\"back.eml\"\r\n"
                + "Content-Type: message/rfc822\r\n\r\n" + report + "\r\n--b--\r\n";
        return run(owner, owner.post("/mail/returned", BodyPublishers.ofString(body),
                "multipart/form-data; boundary=b"));
    }

    /** Mails that are told once the run is over to which an answer leads. */
    private static List<String> run(Visitor owner, HttpResponse<String> begun) {
        String path = begun.headers().firstValue("Location").orElseThrow();
        JsonNode run = owner.json(path);
        while (run.path("state").asString().equals("waiting") || run.path("state").asString().equals("running")) {
            Thread.onSpinWait();
            run = owner.json(path);
        }
        assertThat(run.path("result").path("sent").path("problems")).as(run.toString()).isEmpty();
        return run.path("result").path("sent").path("mails").valueStream()
                .map(mail -> mail.path("mail").asString() + " " + mail.path("state").asString()).toList();
    }
}
