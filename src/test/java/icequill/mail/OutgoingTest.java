package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

/** Several mails over one connection, and what is kept from everybody. */
@Isolated
class OutgoingTest {

    private static final List<String> LOGGERS = List.of("icequill.mail", "jakarta.mail", "org.eclipse.angus");

    private static Outgoing outgoing(ScriptedServer server) {
        return Outgoing.to(Mails.server(server.port(), Security.PLAIN, Optional.empty())).orElseThrow();
    }

    private static List<String> verbs(ScriptedServer server) {
        return server.commands().stream().map(command -> command.split("[: ]", 2)[0]).toList();
    }

    @Test
    void secondMail_goesOverTheSameConnection() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            try (Outgoing outgoing = outgoing(server)) {
                assertThat(outgoing.send(Mails.to("ana@example.com"))).isInstanceOf(Submission.Taken.class);
                assertThat(outgoing.send(Mails.to("bo@example.com"))).isInstanceOf(Submission.Taken.class);
            }
            assertThat(verbs(server)).containsSequence("EHLO", "MAIL", "RCPT", "DATA", "NOOP", "MAIL", "RCPT", "DATA");
            assertThat(server.commands()).startsWith("EHLO icewright.example.com",
                    "MAIL FROM:<office@icewright.example.com>", "RCPT TO:<ana@example.com>", "DATA");
            assertThat(server.taken()).hasSize(2);
        }
    }

    @Test
    void whereTheServerHungUp_aNewConnectionIsMade() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of("NOOP", "drop"))) {
            try (Outgoing outgoing = outgoing(server)) {
                assertThat(outgoing.send(Mails.to("ana@example.com"))).isInstanceOf(Submission.Taken.class);
                assertThat(outgoing.send(Mails.to("bo@example.com"))).isInstanceOf(Submission.Taken.class);
            }
            assertThat(verbs(server)).containsSequence("NOOP", "EHLO", "MAIL");
            assertThat(server.taken()).hasSize(2);
        }
    }

    @Test
    void oneRecipientRefused_nobodyGetsIt_andTheNextMailGoes() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of("RCPT2", "550 5.1.1 nobody\u001b of that name"))) {
            try (Outgoing outgoing = outgoing(server)) {
                assertThat(outgoing.send(Mails.to("ana@example.com", "gone@example.com", "bo@example.com")))
                        .isEqualTo(new Submission.Refused(Why.RECIPIENT_REFUSED, "550 5.1.1 nobody of that name",
                                Optional.of("gone@example.com")));
                assertThat(server.taken()).isEmpty();
                assertThat(outgoing.send(Mails.to("bo@example.com"))).isInstanceOf(Submission.Taken.class);
            }
            assertThat(verbs(server)).containsSequence("RCPT", "RCPT", "RCPT", "RSET", "NOOP", "MAIL", "RCPT", "DATA");
            assertThat(server.taken()).hasSize(1);
        }
    }

    @Test
    void recipientWhoIsRefused_countsMoreThanOneWhoIsPutOff() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of("RCPT1", "450 busy", "RCPT2", "550 nobody"))) {
            assertThat(Mails.send(Mails.server(server.port(), Security.PLAIN, Optional.empty()),
                    Mails.to("ana@example.com", "gone@example.com"))).isEqualTo(
                            new Submission.Refused(Why.RECIPIENT_REFUSED, "550 nobody",
                                    Optional.of("gone@example.com")));
        }
    }

    @Test
    void longAnswer_isCut() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of("MAIL", "550-" + "x".repeat(500) + "\n550 y"))) {
            assertThat(Mails.send(Mails.server(server.port(), Security.PLAIN, Optional.empty()),
                    Mails.to("ana@example.com"))).isInstanceOfSatisfying(Submission.Refused.class,
                            refused -> assertThat(refused.answer()).hasSize(300).startsWith("550-xxx").endsWith("…"));
        }
    }

    @Test
    void nobodyThere_isNotReached() {
        int port;
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            port = server.port();
        }
        assertThat(Mails.send(Mails.server(port, Security.PLAIN, Optional.empty()), Mails.to("ana@example.com")))
                .isEqualTo(new Submission.PutOff(Why.NOT_REACHED, ""));
    }

    /** The library logs what it says to servers when it is asked to. */
    @Test
    void password_isShownNowhere() {
        StringBuilder log = new StringBuilder();
        List<Logger> loggers = LOGGERS.stream().map(Logger::getLogger).toList();
        Handler handler = intoText(log);
        loggers.forEach(logger -> {
            logger.setLevel(Level.ALL);
            logger.addHandler(handler);
        });
        List<String> shown = new CopyOnWriteArrayList<>();
        try (ScriptedServer server = new ScriptedServer(Security.TLS, "localhost", Map.of("AUTH", "535 wrong"))) {
            MailServer settings = Mails.server(server.port(), Security.TLS, Mails.login(Mails.SECRET));
            shown.add(settings.toString());
            try (Outgoing outgoing = Outgoing.to(settings).orElseThrow()) {
                shown.add(outgoing.send(Mails.to("ana@example.com")).toString());
            }
        } finally {
            loggers.forEach(logger -> {
                logger.removeHandler(handler);
                logger.setLevel(null);
            });
        }
        shown.add(log.toString());
        String encoded = Base64.getEncoder()
                .encodeToString(("\0office\0" + Mails.SECRET).getBytes(StandardCharsets.UTF_8));
        assertThat(log.toString()).contains("AUTH PLAIN");
        assertThat(shown).allSatisfy(text -> assertThat(text).doesNotContain(Mails.SECRET, encoded));
    }

    private static Handler intoText(StringBuilder log) {
        Handler handler = new Handler() {
            @Override
            public synchronized void publish(LogRecord entry) {
                log.append(new SimpleFormatter().format(entry));
            }

            @Override
            public void flush() {
                // Nothing is held back.
            }

            @Override
            public void close() {
                // Nothing is open.
            }
        };
        handler.setLevel(Level.ALL);
        return handler;
    }

    @Test
    void passwordsLetters_areWipedAfterUse() {
        char[] password = Mails.SECRET.toCharArray();
        try (ScriptedServer server = new ScriptedServer(Security.TLS, "localhost", Map.of())) {
            Mails.send(Mails.server(server.port(), Security.TLS, Optional.of(new Login("office", () -> password))),
                    Mails.to("ana@example.com"));
        }
        assertThat(Stream.of(new String(password))).containsExactly("\0".repeat(Mails.SECRET.length()));
    }
}
