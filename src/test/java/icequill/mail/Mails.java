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

    /** The same, given up after a moment: for servers that do not answer. */
    static MailServer hasty(MailServer server) {
        Duration moment = Duration.ofSeconds(1);
        return new MailServer(server.host(), server.port(), server.security(), server.login(), server.trusted(),
                new Timeouts(moment, moment, moment));
    }

    /** Whether a server is scripted not to answer. */
    static boolean isMute(String does) {
        return does.equals("silent") || does.equals("deaf");
    }

    /** One that trusts the certificate of this test's servers. */
    static MailServer server(int port, Security security, Optional<Login> login) {
        return server(port, security, login, Optional.of("localhost"));
    }

    /** @param trusted which of the certificates beside this test's vouches for it */
    static MailServer server(int port, Security security, Optional<Login> login, Optional<String> trusted) {
        return new MailServer("localhost", port, security, login,
                trusted.map(name -> Path.of("src/test/resources/icequill/mail", name + ".pem")),
                Timeouts.USUAL);
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
