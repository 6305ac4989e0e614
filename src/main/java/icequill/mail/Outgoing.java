package icequill.mail;

import icequill.problem.Validated;
import jakarta.mail.Address;
import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import jakarta.mail.internet.InternetAddress;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.time.Duration;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import javax.net.ssl.SSLSocketFactory;
import org.jspecify.annotations.Nullable;

/**
 * Hands mails to a server, one after the other over one connection, which is made at the first and again wherever the server closed it. For
 * one thread. What it says to the server is not logged.
 */
public final class Outgoing implements AutoCloseable {

    private final MailServer server;
    private final Optional<SSLSocketFactory> trusted;
    private @Nullable WatchedTransport line;

    private Outgoing(MailServer server, Optional<SSLSocketFactory> trusted) {
        this.server = server;
        this.trusted = trusted;
    }

    /** Nothing is connected yet; a problem only where the certificates to trust cannot be read. */
    public static Validated<Outgoing> to(MailServer server) {
        return server.trusted().map(file -> TrustedCertificates.of(file).map(Optional::of))
                .orElseGet(() -> Validated.valid(Optional.empty()))
                .map(factory -> new Outgoing(server, factory));
    }

    /** Hands one mail over, and tells for sure whether the server has it, or that nobody can know. It throws nothing. */
    public Submission send(MailMessage mail) {
        byte[] form = MimeForm.of(mail, Map.of());
        WatchedTransport open = line;
        if (open == null || !open.isConnected()) {
            open = new WatchedTransport(session(mail), server.security() == Security.TLS);
            line = open;
            try {
                connect(open);
            } catch (MessagingException failed) {
                close();
                return Verdict.of(open.heard(), failed);
            }
            if (server.login().isPresent() && !open.supportsExtension("AUTH")) {
                close();
                return new Submission.Unusable(Why.NO_LOGIN_OFFERED, "");
            }
        }
        return handOver(open, mail, form);
    }

    private Submission handOver(WatchedTransport open, MailMessage mail, byte[] form) {
        open.forget();
        try {
            open.sendMessage(new MimeMessage(null, new ByteArrayInputStream(form)), recipients(mail));
            return new Submission.Taken(open.heard().answer());
        } catch (MessagingException failed) {
            Submission became = Verdict.of(open.heard(), failed);
            if (!isAnswered(became)) {
                close();
            }
            return became;
        }
    }

    /** Otherwise what the server says next may belong to this mail, not to the next one. */
    private static boolean isAnswered(Submission became) {
        return switch (became) {
        case Submission.Taken taken -> true;
        case Submission.Refused refused -> true;
        case Submission.PutOff putOff -> putOff.why() == Why.LATER;
        case Submission.Unusable unusable -> false;
        case Submission.Unknown unknown -> false;
        };
    }

    private static Address[] recipients(MailMessage mail) throws MessagingException {
        Address[] to = new Address[mail.parties().to().size()];
        for (int at = 0; at < to.length; at++) {
            InternetAddress address = new InternetAddress();
            address.setAddress(mail.parties().to().get(at).text());
            to[at] = address;
        }
        return to;
    }

    private void connect(WatchedTransport open) throws MessagingException {
        if (server.login().isEmpty()) {
            open.connect(server.host(), server.port(), null, null);
            return;
        }
        Login login = server.login().get();
        // Whoever logs in acts for himself, which not every server takes when it is said (RFC 4616, section 2).
        open.setAuthorizationID("");
        char[] password = login.password().get();
        try {
            open.connect(server.host(), server.port(), login.user(), new String(password));
        } finally {
            Arrays.fill(password, '\0');
        }
    }

    private Session session(MailMessage mail) {
        Properties settings = new Properties();
        settings.put("mail.smtp.localhost", mail.parties().from().domain());
        settings.put("mail.smtp.auth.mechanisms", "PLAIN LOGIN");
        settings.put("mail.smtp.sendpartial", "false");
        settings.put("mail.smtp.quitwait", "false");
        settings.put("mail.smtp.starttls.enable", String.valueOf(server.security() == Security.STARTTLS));
        settings.put("mail.smtp.starttls.required", String.valueOf(server.security() == Security.STARTTLS));
        settings.put("mail.smtp.ssl.checkserveridentity", "true");
        settings.put("mail.smtp.ssl.protocols", "TLSv1.3 TLSv1.2");
        settings.put("mail.smtp.ssl.socketFactory.fallback", "false");
        settings.put("mail.smtp.socketFactory.fallback", "false");
        trusted.ifPresent(factory -> settings.put("mail.smtp.ssl.socketFactory", factory));
        settings.put("mail.smtp.connectiontimeout", millis(server.timeouts().connect()));
        settings.put("mail.smtp.timeout", millis(server.timeouts().read()));
        settings.put("mail.smtp.writetimeout", millis(server.timeouts().write()));
        return Session.getInstance(settings);
    }

    private static String millis(Duration time) {
        return String.valueOf(time.toMillis());
    }

    /** Says goodbye; what was sent stays sent, whatever the server answers. */
    @Override
    public void close() {
        WatchedTransport open = line;
        line = null;
        if (open != null) {
            try {
                open.close();
            } catch (MessagingException gone) {
                // The server closed it first, and has what it has.
            }
        }
    }
}
