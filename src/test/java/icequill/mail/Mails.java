package icequill.mail;

import icequill.party.Language;
import icequill.problem.Place;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** An invented shop's mail, and servers on this machine. */
final class Mails {

    static final String ID = "inv-2026-00012.1@icewright.example.com";
    static final String SECRET = "Geheim-4711";
    static final Path LOCALHOST = Path.of("src/test/resources/icequill/mail/localhost.pem");

    private static final int SEED = 24;

    private Mails() {
    }

    static MailMessage to(String... recipients) {
        return of(content("Invoice INV-2026-00012", "Your invoice is enclosed.\n", List.of()), recipients);
    }

    static MailMessage of(MailContent content, String... recipients) {
        MailAddress from = address("office@icewright.example.com").named("Icewright Ice Service", Place.NOWHERE)
                .orElseThrow();
        return new MailMessage(
                new MailParties(from, Optional.empty(), Arrays.stream(recipients).map(Mails::address).toList()),
                content,
                ID, ZonedDateTime.of(2026, 6, 3, 9, 5, 0, 0, ZoneId.of("America/Denver")));
    }

    static MailContent content(String subject, String text, List<Enclosure> enclosures) {
        return new MailContent(Language.SPANISH, subject, text, enclosures);
    }

    static Enclosure enclosure(String name, String mediaType, byte[] bytes) {
        return Enclosure.of(name, mediaType, bytes, Place.NOWHERE).orElseThrow();
    }

    static MailAddress address(String text) {
        return MailAddress.read(text, Place.NOWHERE).orElseThrow();
    }

    /** As little like text as a PDF. */
    static byte[] bytes(int size) {
        byte[] bytes = new byte[size];
        new Random(SEED).nextBytes(bytes);
        byte[] head = "%PDF-1.7\n.\n..\r\n.\r\n".getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(head, 0, bytes, 0, Math.min(size, head.length));
        return bytes;
    }

    static MailServer server(int port, Security security, Optional<Login> login) {
        Duration short300 = Duration.ofMillis(300);
        return new MailServer("localhost", port, security, login,
                security == Security.PLAIN ? Optional.empty() : Optional.of(LOCALHOST),
                new Timeouts(Duration.ofSeconds(5), short300, short300));
    }

    static Optional<Login> login(String password) {
        return Optional.of(new Login("office", password::toCharArray));
    }

    static Submission send(MailServer server, MailMessage mail) {
        try (Outgoing outgoing = Outgoing.to(server).orElseThrow()) {
            return outgoing.send(mail);
        }
    }
}
