package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.mail.Returned.Action;
import icequill.mail.Returned.Failed;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Mails that came back, put together as RFC 3464, RFC 3461 and RFC 3834 have them. */
class ReturnedMailTest {

    private static final int SEED = 3464;

    private static final String HEAD = """
            From: Mail Delivery System <mailer-daemon@mx.example.net>
            To: office@icewright.example.com
            Subject: Undelivered Mail Returned to Sender
            Message-ID: <20260603.1234@mx.example.net>
            References: <another.thing@example.net>
            MIME-Version: 1.0
            Content-Type: multipart/report; report-type=delivery-status; boundary="=_b"

            This part is for no one.
            --=_b
            Content-Type: text/plain; charset=utf-8

            Sorry, two of your letters could not be brought: <not.ours@example.com>.
            """;
    private static final String STATUS = """
            --=_b
            Content-Type: message/delivery-status

            Reporting-MTA: dns; mx.example.net
            Arrival-Date: Wed, 3 Jun 2026 09:05:01 -0600

            Original-Recipient: rfc822;ana@example.com
            Final-Recipient: rfc822; ana.old@mailbox.example.com
            Action: failed (permanently)
            Status: 5.1.1 (no such mailbox)
            Diagnostic-Code: smtp; 550 5.1.1 no
               such user here

            Final-Recipient: rfc822; bo@example.com
            ACTION: Delayed
            status: 4.2.2
            Will-Retry-Until: Sat, 6 Jun 2026 09:05:01 -0600

            """;
    private static final String ORIGINAL = """
            --=_b
            Content-Type: message/rfc822

            Received: from a by b
            Message-ID:
             <%s>
            Subject: Invoice

            Your invoice is enclosed.
            --=_b--
            """.formatted(Mails.ID);

    @TempDir
    private Path folder;

    private Validated<Returned> read(String mail) throws IOException {
        return readBytes(mail.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
    }

    private Validated<Returned> readBytes(byte[] mail) throws IOException {
        Path file = folder.resolve("bounce.eml");
        Files.write(file, mail);
        return ReturnedMail.read(file, Mails.ID::equals);
    }

    private static void isProblem(Validated<Returned> read, Code code) {
        assertThat(read.problems()).extracting(Problem::code).containsExactly(code);
    }

    @Test
    void report_tellsWhichMail_andEachRecipient() throws IOException {
        assertThat(read(HEAD + STATUS + ORIGINAL).orElseThrow()).isEqualTo(new Returned(Mails.ID, List.of(
                new Failed("ana@example.com", Action.FAILED, "5.1.1", "550 5.1.1 no such user here"),
                new Failed("bo@example.com", Action.DELAYED, "4.2.2", ""))));
    }

    @Test
    void unixEndsOfLines_areReadAsWell() throws IOException {
        assertThat(readBytes((HEAD + STATUS + ORIGINAL).getBytes(StandardCharsets.UTF_8)).orElseThrow().failed())
                .hasSize(2);
    }

    @Test
    void headOfTheMailAlone_isEnough() throws IOException {
        String original = """
                --=_b
                Content-Type: text/rfc822-headers

                Subject: Invoice
                message-id: <%s>

                --=_b--
                """.formatted(Mails.ID);

        assertThat(read(HEAD + STATUS + original).orElseThrow().messageId()).isEqualTo(Mails.ID);
    }

    /** As RFC 6533 allows it. */
    @Test
    void statusInBase64_isReadAsWell() throws IOException {
        String status = STATUS.substring(STATUS.indexOf("\n\n") + 2);
        String encoded = """
                --=_b
                Content-Type: message/global-delivery-status
                Content-Transfer-Encoding: base64

                %s
                """.formatted(
                Base64.getMimeEncoder(76, new byte[]{'\n'}).encodeToString(status.getBytes(StandardCharsets.UTF_8)));

        assertThat(read(HEAD + encoded + ORIGINAL).orElseThrow().failed()).extracting(Failed::address)
                .containsExactly("ana@example.com", "bo@example.com");
    }

    @Test
    void reportInPlainWords_isFoundByItsMail() throws IOException {
        assertThat(read("""
                From: postmaster@example.net
                Subject: failure notice

                Hi. I was not able to bring your message to <ana@example.com>. Here is a copy.

                Return-Path: <office@icewright.example.com>
                Message-ID: <%s>
                """.formatted(Mails.ID)).orElseThrow())
                .isEqualTo(new Returned(Mails.ID, List.of()));
    }

    @Test
    void reportAboutAnotherMail_isAProblem() throws IOException {
        isProblem(read(HEAD + STATUS + ORIGINAL.replace(Mails.ID, "else@example.com")), Code.UNKNOWN_NAME);
        isProblem(read(HEAD + STATUS + "--=_b--\n"), Code.UNKNOWN_NAME);
    }

    /** RFC 3834: whoever is away answers the mail, and did get it. */
    @Test
    void answerOfWhoeverIsAway_isNoReturn() throws IOException {
        isProblem(read("""
                From: ana@example.com
                Subject: Away until Monday
                Auto-Submitted: auto-replied
                In-Reply-To: <%1$s>
                References: <%1$s>

                Back on Monday.
                """.formatted(Mails.ID)), Code.UNKNOWN_NAME);
    }

    @Test
    void controlCharactersInWhatAServerSaid_areNotShown() throws IOException {
        Returned returned = read(HEAD + STATUS.replace("no such mailbox", "x").replace("such user here",
                "such\u001b[31m user " + "y".repeat(400)) + ORIGINAL).orElseThrow();

        assertThat(returned.failed().get(0).diagnostic()).startsWith("550 5.1.1 no such [31m user yy").hasSize(300)
                .endsWith("…");
    }

    @Test
    void cutAndRandomFiles_areProblemsOrRead_neverMore() throws IOException {
        byte[] whole = (HEAD + STATUS + ORIGINAL).replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
        Random random = new Random(SEED);
        for (int tries = 0; tries < 200; tries++) {
            byte[] damaged = Arrays.copyOf(whole, random.nextInt(whole.length));
            for (int changes = random.nextInt(20); changes > 0 && damaged.length > 0; changes--) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            }
            Validated<Returned> read = readBytes(damaged);
            assertThat(read.problems().isEmpty() ? read.orElseThrow().messageId() : Mails.ID).isEqualTo(Mails.ID);
        }
    }

    @Test
    void partsWithoutEnd_areRefused() throws IOException {
        StringBuilder deep = new StringBuilder("Subject: x\n");
        for (int depth = 0; depth < 200; depth++) {
            deep.append("Content-Type: multipart/mixed; boundary=b").append(depth).append("\n\n--b").append(depth)
                    .append('\n');
        }
        isProblem(read(deep.toString()), Code.UNREADABLE);
        isProblem(read("Content-Type: multipart/mixed; boundary=b\n\n" + "--b\n\nx\n".repeat(5_000) + "--b--\n"),
                Code.UNREADABLE);
    }

    @Test
    void whatIsNoFile_andWhatIsTooLarge_areProblems() throws IOException {
        isProblem(ReturnedMail.read(folder.resolve("none.eml"), Mails.ID::equals), Code.UNREADABLE);
        isProblem(ReturnedMail.read(folder, Mails.ID::equals), Code.UNREADABLE);
        Path large = folder.resolve("large.eml");
        try (SeekableByteChannel channel = Files.newByteChannel(large, StandardOpenOption.CREATE,
                StandardOpenOption.WRITE)) {
            channel.position(60_000_001L);
            channel.write(ByteBuffer.wrap(new byte[1]));
        }
        isProblem(ReturnedMail.read(large, Mails.ID::equals), Code.TOO_LARGE);
    }
}
