package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.OwnProcess;
import icequill.cli.CommandsTest.Run;
import icequill.ledger.Database;
import icequill.mail.DeliveryReport;
import icequill.mail.ScriptedServer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Base64;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** Papers that go out by mail, from their issue to a customer who has them, by commands and a server that answers as a test asks for. */
@Tag("wide")
class MailLifeTest {

    private static final String BAKERY = "crumb-lane-bakery";
    private static final String PAPER = "INV-2026-00001";
    private static final String MAIL = PAPER + ".m1";

    @TempDir
    private Path folder;

    /** The customer wants bills at once, bare, with the data and a tax form beside: read back line by line, as it came. */
    @ParameterizedTest
    @EnumSource
    void bill_isWrittenAsItIsIssued_andGoesOutOnce(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        byte[] form = "%PDF-1.7 a form".getBytes(StandardCharsets.US_ASCII);
        Files.write(folder.resolve("w9.pdf"), form);
        shop.json("customer", "change", BAKERY, "--mail-at-once", "bills", "--mail-bare", "yes", "--mail-data", "yes",
                "--mail-enclosed", "w9");
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            served(server, "  standing: [{name: w9, title: Form W-9, file: w9.pdf, expires: 2027-01-31}]\n");
            shop.issue("spring-cleaning-bakery", "2026-05-14");

            assertThat(states(shop, "mail", "list")).containsExactly(MAIL + " waiting");
            assertThat(shop.json("today").path("mails").path("waiting").asInt()).isEqualTo(1);
            assertThat(states(shop, "mail", "send")).containsExactly(MAIL + " sent");
            assertThat(states(shop, "mail", "send")).isEmpty();

            assertThat(server.taken()).hasSize(1);
            String mail = server.taken().getFirst();
            assertThat(server.commands()).contains("RCPT TO:<accounts@crumblane.example>");
            assertThat(mail).contains("Subject: Quillwater Ice Machine Care: Invoice " + PAPER, "text/plain",
                    "application/pdf", PAPER, ".xml", "w9.pdf", Base64.getEncoder().encodeToString(form));
            byte[] bare = Files.readAllBytes(Path.of(shop.json("paper", "reprint", PAPER, "--bare").path("files")
                    .get(0).asString()));
            assertThat(mail.replace("\r\n", "")).contains(Base64.getEncoder().encodeToString(bare));
        }
        JsonNode atPaper = shop.json("show", PAPER).path("paper").path("mails").get(0);
        assertThat(atPaper.path("sent").asString()).startsWith("2026-12-");
        assertThat(atPaper.path("to").get(0).asString()).isEqualTo("accounts@crumblane.example");
        assertThat(atPaper.path("files")).hasSize(3);
        assertThat(shop.run("show", PAPER).out()).contains(MAIL + " sent 2026-12-",
                " to accounts@crumblane.example: " + PAPER);
        JsonNode sheet = shop.json("mail", "show", MAIL);
        assertThat(sheet.path("mail").path("to").get(0).asString()).isEqualTo("accounts@crumblane.example");
        assertThat(sheet.path("copy").path("text").asString()).contains("Form W-9", "due on")
                .doesNotContainIgnoringCase("margin").doesNotContainIgnoringCase("our cost");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    /** What a server does, where the mail stands then, and whether it goes out by itself: at once, half an hour later, or never. */
    @ParameterizedTest
    @CsvSource({"END, 451 busy, waiting, later", "RCPT1, 450 full, waiting, later", "DATA, drop, waiting, later",
            "RCPT1, 550 nobody, refused, never", "END, 554 no, refused, never",
            "END, drop, unknown, never", "AUTH, 250 odd, sent, never"})
    void server_refusesOrBreaksOff(String step, String answer, String state, String again) throws IOException {
        BookShop shop = written();
        try (ScriptedServer server = ScriptedServer.plain(Map.of(step, answer))) {
            served(server, "");
            shop.run("mail", "send");
            assertThat(states(shop, "mail", "list", "--all")).containsExactly(MAIL + " " + state);
            String message = shop.json("mail", "show", MAIL).path("messageId").asString();
            int before = server.taken().size();
            assertThat(states(shop, "mail", "send")).isEmpty();
            assertThat(server.taken()).hasSize(before);
            assertThat(shop.json("mail", "show", MAIL).path("messageId").asString()).isEqualTo(message);
        }
        try (ScriptedServer well = ScriptedServer.plain(Map.of())) {
            served(well, "");
            Run later = shop.runAt(Clock.offset(BookShop.CLOCK, Duration.ofMinutes(30)), "mail", "send", "--json");
            assertThat(later.json().path("mails")).hasSize(again.equals("later") ? 1 : 0);
            assertThat(well.taken()).hasSize(again.equals("later") ? 1 : 0);
        }
    }

    @Test
    void unknown_waitsForAPerson_andBearsTheSameMessageIdAgain() throws IOException {
        BookShop shop = written();
        try (ScriptedServer server = ScriptedServer.plain(Map.of("END", "drop"))) {
            served(server, "");
            shop.run("mail", "send");
            assertThat(shop.json("today").path("mails").path("toLookAfter").asInt()).isEqualTo(1);
            assertThat(shop.problems("mail", "again", MAIL).getFirst()).contains("nobody knows");
            assertThat(shop.problems("mail", "send", MAIL).getFirst()).contains("nobody knows");
            assertThat(shop.problems("mail", "write", PAPER, "--again").getFirst()).contains("is about it already");
            shop.json("mail", "found", MAIL, "--did-not");
            assertThat(server.commands().stream().filter("DATA"::equals)).hasSize(1);
        }
        try (ScriptedServer well = ScriptedServer.plain(Map.of())) {
            served(well, "");
            assertThat(states(shop, "mail", "send")).containsExactly(MAIL + " sent");
            assertThat(well.taken().getFirst())
                    .contains("Message-ID: <" + shop.json("mail", "show", MAIL).path("messageId").asString() + ">");
        }
        assertThat(shop.problems("mail", "write", PAPER).getFirst()).contains("--again");
        shop.json("mail", "write", PAPER, "--again");
        assertThat(states(shop, "mail", "list")).containsExactly(PAPER + ".m2 waiting");
        shop.json("mail", "withdraw", PAPER + ".m2", "--reason", "by post");
        assertThat(states(shop, "mail", "list")).isEmpty();
    }

    /** No mail is put off for what is wrong with the server, and the others are not tried. */
    @Test
    void wrongPassword_endsTheRun() throws IOException {
        BookShop shop = written();
        shop.json("mail", "withdraw", MAIL, "--reason", "two of them are wanted");
        shop.issue("late-call", "2026-05-15");
        shop.json("contact", "add", "Mara Voss", "--customer", "pennon-wharf-taproom", "--for", "bills", "--email",
                "mara@pennon.example");
        shop.json("mail", "write", PAPER, "INV-2026-00002");
        try (ScriptedServer server = ScriptedServer.plain(Map.of("AUTH", "535 no"))) {
            served(server, "");
            Files.writeString(folder.resolve("shop.yaml"), Files.readString(folder.resolve("shop.yaml"))
                    .replace("security: plain", "security: plain, user: office, passwordFile: mail.txt"));
            Files.writeString(folder.resolve("mail.txt"), "secret-word\n");

            Run run = shop.run("mail", "send");

            assertThat(run.status()).isEqualTo(3);
            assertThat(run.err()).contains("535").doesNotContain("secret-word");
            assertThat(server.commands().stream().filter(line -> line.startsWith("AUTH"))).hasSize(1);
            assertThat(server.commands()).noneMatch(line -> line.startsWith("DATA"));
        }
        assertThat(states(shop, "mail", "list")).hasSize(2).allMatch(line -> line.endsWith("waiting"));
    }

    /** Two runs at the same moment over the same mails. */
    @ParameterizedTest
    @EnumSource
    void twoAtOnce_sendEachOnce(Database database) throws Exception {
        BookShop shop = BookShop.in(folder, database);
        for (String visit : List.of("spring-cleaning-bakery", "found-nobody-bakery", "waiting-hotel")) {
            shop.issue(visit, "2026-11-30");
        }
        shop.json("mail", "write", "--month", "2026-11");
        try (ScriptedServer server = ScriptedServer.plain(Map.of());
                ExecutorService two = Executors.newFixedThreadPool(2)) {
            served(server, "");
            List<Future<Run>> runs = List.of(two.submit(() -> shop.run("mail", "send", "--json")),
                    two.submit(() -> shop.run("mail", "send", "--json")));
            int sent = 0;
            for (Future<Run> run : runs) {
                sent += run.get().json().path("mails").size();
            }
            assertThat(sent).isEqualTo(3);
            assertThat(server.taken()).hasSize(3);
            assertThat(new HashSet<>(server.taken())).hasSize(3);
        }
        assertThat(states(shop, "mail", "list")).isEmpty();
    }

    /** The process dies while the server has all of the mail and has not answered. */
    @Test
    void killedWhileItIsSent_isUnknownOnceNobodyCanBeSendingIt() throws Exception {
        BookShop shop = written();
        try (ScriptedServer server = ScriptedServer.plain(Map.of("END", "silent"))) {
            served(server, "");
            Process run = new ProcessBuilder(OwnProcess.java(List.of(), SendingRun.class,
                    List.of(folder.toString()))).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            while (run.isAlive() && !server.commands().contains("DATA")) {
                Thread.onSpinWait();
            }
            assertThat(server.commands()).contains("DATA");
            run.destroyForcibly().waitFor();
        }
        try (ScriptedServer well = ScriptedServer.plain(Map.of())) {
            served(well, "");
            assertThat(states(shop, "mail", "list")).containsExactly(MAIL + " sending");
            assertThat(states(shop, "mail", "send")).isEmpty();
            Clock later = Clock.offset(BookShop.CLOCK, Duration.ofMinutes(61));
            assertThat(shop.runAt(later, "mail", "list").out()).contains(MAIL, "unknown");
            assertThat(shop.runAt(later, "mail", "send").out()).contains("None.");
            assertThat(well.taken()).isEmpty();
            assertThat(shop.runAt(later, "mail", "found", MAIL, "--did-not").status()).isZero();
            assertThat(shop.runAt(later, "mail", "send").out()).contains(MAIL + " sent");
            assertThat(well.taken()).hasSize(1);
        }
    }

    /** Sends what waits, at the clock of the test. */
    static final class SendingRun {

        private SendingRun() {
        }

        public static void main(String[] args) {
            new BookShop(Path.of(args[0])).run("mail", "send");
        }
    }

    @Test
    void withoutAServer_isLaidIntoTheOutbox() throws IOException {
        BookShop shop = written();

        assertThat(states(shop, "mail", "send")).containsExactly(MAIL + " drafted");

        assertThat(Files.readString(folder.resolve("outbox/" + MAIL + ".eml"))).contains("X-Unsent: 1", PAPER);
        shop.json("mail", "found", MAIL, "--went-out");
        assertThat(states(shop, "mail", "list", "--all")).containsExactly(MAIL + " sent");
    }

    /** A report as RFC 3464 has it, of the mail that went out, and one of a mail that nobody sent. */
    @Test
    void returned_isReadFromAFolder() throws IOException {
        BookShop shop = written();
        shop.json("mail", "send");
        shop.json("mail", "found", MAIL, "--went-out");
        String message = shop.json("mail", "show", MAIL).path("messageId").asString();
        shop.write("back/1.eml", DeliveryReport.of(message));
        shop.write("back/2.eml", DeliveryReport.of("somebody@else.example"));

        Run read = shop.run("mail", "returned", folder.resolve("back").toString(), "--json");

        assertThat(read.json().path("mails")).hasSize(1);
        assertThat(read.json().path("mails").get(0).path("state").asString()).isEqualTo("returned");
        assertThat(read.json().path("mails").get(0).path("why").asString())
                .isEqualTo("accounts@crumblane.example 5.1.1 550 5.1.1 no such person");
        assertThat(read.json().path("problems")).hasSize(1);
        shop.json("mail", "again", MAIL);
        assertThat(states(shop, "mail", "list")).containsExactly(MAIL + " waiting");
    }

    @Test
    void expiredPaper_orNobodyToWriteTo_isToldAndNothingIsWritten() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        shop.issue("spring-cleaning-bakery", "2026-05-14");
        shop.issue("late-call", "2026-05-15");
        Files.writeString(folder.resolve("shop.yaml"),
                "\nmail:\n  standing: [{name: insurance, file: i.pdf, expires: 2026-12-29}]\n",
                StandardOpenOption.APPEND);
        shop.json("customer", "change", BAKERY, "--mail-enclosed", "insurance");

        assertThat(shop.problems("mail", "write", PAPER, "INV-2026-00002")).hasSize(2)
                .anyMatch(text -> text.contains("\"insurance\" expired on 2026-12-29"))
                .anyMatch(text -> text.contains("nobody with a mail address is there for bills"));
        assertThat(states(shop, "mail", "list", "--all")).isEmpty();
    }

    /** A paper without a number, read back as it came; then its customer is forgotten. */
    @ParameterizedTest
    @EnumSource
    void statement_goesOutAsItLiesInPapers_andIsForgottenWithItsCustomer(Database database) throws IOException {
        BookShop shop = BookShop.in(folder, database);
        shop.issue("spring-cleaning-bakery", "2026-05-14");
        JsonNode paper = shop.json("customer", "statement", BAKERY, "--date", "2026-06-01", "--mail");
        String mail = paper.path("mail").asString();
        assertThat(mail).isEqualTo("statement-" + BAKERY + "-2026-06-01.m1");
        String printed = Base64.getEncoder()
                .encodeToString(Files.readAllBytes(Path.of(paper.path("files").get(0).asString())));
        shop.json("customer", "statement", BAKERY, "--date", "2026-06-01", "--lang", "es");
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            served(server, "");
            assertThat(states(shop, "mail", "send")).containsExactly(mail + " sent");
            assertThat(server.taken().getFirst()).contains("Statement of", "accounts@crumblane.example");
            assertThat(server.taken().getFirst().replace("\r\n", "")).contains(printed);
        }
        assertThat(shop.json("audit").path("findings")).isEmpty();

        shop.json("customer", "forget", BAKERY, "--yes");

        Run shown = shop.run("mail", "show", mail, "--json");
        assertThat(shown.status()).isZero();
        assertThat(shown.out()).doesNotContain("accounts@crumblane.example", "Statement of");
        assertThat(shop.run("audit", "trail", "--json").out()).doesNotContain("Statement of");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    @Test
    void reminderByMail_saysWhatItsPaperSays_andIsKeptInABackup() throws IOException {
        BookShop shop = BookShop.in(folder.resolve("first"), Database.SQLITE);
        shop.issue("spring-cleaning-bakery", "2026-05-14");
        JsonNode paper = shop.json("customer", "reminder", BAKERY, "--date", "2026-09-01", "--mail");
        String mail = paper.path("mail").asString();
        String text = shop.json("mail", "show", mail).path("copy").path("text").asString();
        assertThat(text).contains(paper.path("amounts").path("total").path("amount").asString(), "Please pay by",
                "bank details").doesNotContainIgnoringCase("margin");

        Path archive = folder.resolve("kept.zip");
        shop.json("backup", archive.toString());
        BookShop again = BookShop.empty(folder.resolve("second"), Database.SQLITE);
        again.json("restore", archive.toString());

        assertThat(again.json("mail", "show", mail).path("problems")).isEmpty();
        assertThat(states(again, "mail", "send")).containsExactly(mail + " drafted");
        assertThat(Files.readString(again.folder().resolve("outbox/" + mail + ".eml")).replace("\r\n", ""))
                .contains(Base64.getEncoder()
                        .encodeToString(Files.readAllBytes(Path.of(paper.path("files").get(0).asString()))));
    }

    /** New York's law on renewals counts only what is handed over or sent by certified mail (General Obligations Law 5-903). */
    @Test
    void renewalNotice_isNotMailedWhereTheLawDoesNotCountIt() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);

        assertThat(shop.problems("agreement", "renewal", BAKERY, "--date", "2027-03-05", "--mail")).singleElement()
                .asString().contains("5-903", "certified");
        assertThat(states(shop, "mail", "list", "--all")).isEmpty();
    }

    @Test
    void mergedCustomersMail_goesToWhomHeIsNow() throws IOException {
        BookShop shop = written();
        shop.json("contact", "add", "Mara Voss", "--customer", "pennon-wharf-taproom", "--for", "bills", "--email",
                "mara@pennon.example");
        shop.json("customer", "merge", BAKERY, "--into", "pennon-wharf-taproom", "--yes");

        assertThat(states(shop, "mail", "list", "--customer", "pennon-wharf-taproom"))
                .containsExactly(MAIL + " waiting");
        assertThat(states(shop, "mail", "list", "--customer", "fernhill-hotels")).isEmpty();
        assertThat(shop.json("mail", "show", MAIL).path("copy").path("to").get(0).asString())
                .isEqualTo("Mara Voss <mara@pennon.example>");
        assertThat(shop.run("mail", "write", "--customer", "pennon-wharf-taproom", "--month", "2026-05", "--dry-run")
                .out()).contains(PAPER, "none: " + MAIL + " waiting");
    }

    /** Where the law counts e-mail, the day on which it went out is that of the notice; one that came back counts no more. */
    @Test
    void renewalNotice_isTheNoticeOfItsAgreementFromTheDayOnWhichItWentOut() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        Path laws = folder.resolve("pricing/notices.yaml");
        Files.writeString(laws,
                Files.readString(laws).replace("delivery: [personal, certified-mail]", "delivery: [personal, email]"));
        Clock march = Clock.fixed(Instant.parse("2027-03-08T17:00:00Z"), ZoneOffset.UTC);
        String mail = shop.json("agreement", "renewal", BAKERY, "--date", "2027-03-05", "--mail").path("paper")
                .path("mail").asString();
        assertThat(notices(shop, march)).isEmpty();
        shop.runAt(march, "mail", "send");
        shop.runAt(march, "mail", "found", mail, "--went-out");

        JsonNode notice = notices(shop, march).get(0);
        assertThat(notice.path("sent").asString() + " " + notice.path("way").asString() + " "
                + notice.path("tracking").asString()).isEqualTo("2027-03-08 email " + mail);
        assertThat(notice.path("served").asBoolean()).isTrue();

        shop.runAt(march, "mail", "returned", mail, "--why", "no such person");
        assertThat(notices(shop, march).get(0).path("served").asBoolean()).isFalse();
        assertThat(notices(shop, march).get(0).path("why").get(0).asString())
                .isEqualTo("It came back on March 8, 2027.");
    }

    private static JsonNode notices(BookShop shop, Clock clock) {
        return shop.runAt(clock, "agreement", "renewals", "--json").json().path("renewals").valueStream()
                .filter(row -> row.path("id").asString().equals(BAKERY)).findFirst().orElseThrow().path("notices");
    }

    @Test
    void announcementOfAVisit_saysWhenSomebodyComes() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        shop.json("contact", "add", "Ola Brandt", "--site", BAKERY, "--for", "visits", "--email",
                "ola@crumblane.example");
        shop.json("visit", "announce", "summer-cleaning-bakery", "--mail");

        JsonNode copy = shop.json("mail", "show", "announcement-summer-cleaning-bakery.m1").path("copy");

        assertThat(copy.path("text").asString()).contains("Good day Ola Brandt",
                "We come on Tuesday, July 14, 2026, from 9:15\u00a0AM to 11:30\u00a0AM");
        assertThat(copy.path("files").get(0).asString()).isEqualTo("announcement-summer-cleaning-bakery.pdf");

        String mail = "announcement-summer-cleaning-bakery.m1";
        assertThat(told(shop)).isEqualTo("not-told");
        shop.json("mail", "send");
        shop.json("mail", "found", mail, "--went-out");
        assertThat(told(shop)).isEqualTo("told");
        shop.json("mail", "returned", mail, "--why", "mailbox full");
        assertThat(told(shop)).isEqualTo("came-back");
        shop.json("mail", "again", mail);
        shop.json("mail", "send");
        shop.json("mail", "found", mail, "--went-out");
        assertThat(told(shop)).isEqualTo("told");
        assertThat(shop.json("audit").path("findings")).isEmpty();
    }

    private static String told(BookShop shop) {
        return shop.json("visit", "announce", "summer-cleaning-bakery")
                .path("visits").get(0).path("state").asString();
    }

    @Test
    void recordOfAVisit_goesToWhoeverTheSiteNames() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        shop.json("visit", "add", folder.resolve("visits/spring-cleaning-bakery.yaml").toString());
        shop.json("contact", "add", "Ola Brandt", "--site", BAKERY, "--for", "visits", "--email",
                "ola@crumblane.example");
        String mail = shop.json("visit", "record", "spring-cleaning-bakery", "--mail").path("mail").asString();
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            served(server, "");

            assertThat(states(shop, "mail", "send")).containsExactly(mail + " sent");

            assertThat(server.commands()).contains("RCPT TO:<ola@crumblane.example>");
            assertThat(server.taken().getFirst()).contains("Good day Ola Brandt");
        }
    }

    private BookShop written() throws IOException {
        BookShop shop = BookShop.in(folder, Database.SQLITE);
        shop.issue("spring-cleaning-bakery", "2026-05-14");
        shop.json("mail", "write", PAPER);
        return shop;
    }

    /** The shop mails by that server from then on. */
    private void served(ScriptedServer server, String more) throws IOException {
        Path settings = folder.resolve("shop.yaml");
        String all = Files.readString(settings);
        int mail = all.indexOf("\nmail:\n");
        String before = mail < 0 ? all : all.substring(0, mail);
        Files.writeString(settings, before + "\nmail:\n  perMinute: 600\n  server: {host: localhost, port: "
                + server.port() + ", security: plain}\n" + more);
    }

    private static List<String> states(BookShop shop, String... command) {
        return StreamSupport.stream(shop.json(command).path("mails").spliterator(), false)
                .map(mail -> mail.path("mail").asString() + " " + mail.path("state").asString()).toList();
    }
}
