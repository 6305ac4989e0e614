package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.mail.SubmissionTest.Told;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Encryption and login: what goes through, what is put off, and what somebody must set right. */
@Tag("wide")
class SecureSubmissionTest {

    @ParameterizedTest(name = "{0}, it shows {1}, we trust {2}: {3} {4}")
    @CsvSource(delimiter = '|', textBlock = """
            STARTTLS | localhost | localhost | Taken    |
            TLS      | localhost | localhost | Taken    |
            STARTTLS | elsewhere | elsewhere | Unusable | NOT_TRUSTED
            TLS      | elsewhere | elsewhere | Unusable | NOT_TRUSTED
            STARTTLS | localhost | elsewhere | Unusable | NOT_TRUSTED
            TLS      | localhost | elsewhere | Unusable | NOT_TRUSTED
            STARTTLS | localhost |           | Unusable | NOT_TRUSTED
            TLS      | localhost |           | Unusable | NOT_TRUSTED
            """)
    void onlyWhoIsVouchedForByThatName_getsIt(Security security, String shows, @Nullable String trusts, String becomes,
            @Nullable Why why) {
        try (ScriptedServer server = new ScriptedServer(security, shows, Map.of())) {
            Submission result = send(server, security, Optional.ofNullable(trusts), Mails.login(Mails.SECRET));

            assertThat(Told.of(result)).isEqualTo(
                    new Told(becomes, why, becomes.equals("Taken") ? "250 queued as 42" : ""));
            assertThat(server.taken()).hasSize(becomes.equals("Taken") ? 1 : 0);
            assertThat(logins(server)).hasSize(becomes.equals("Taken") ? 1 : 0);
        }
    }

    @ParameterizedTest(name = "{0}: {1} -> {2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
            STARTTLS  | drop                       | PutOff   | BROKEN_OFF       |
            STARTTLS  | silent                     | PutOff   | BROKEN_OFF       |
            STARTTLS  | 454 not now                | PutOff   | LATER            | 454 not now
            STARTTLS  | 502 not at all             | Unusable | NO_STARTTLS      | 502 not at all
            HANDSHAKE | drop                       | PutOff   | BROKEN_OFF       |
            EHLO      | 250-here;250 AUTH PLAIN    | Unusable | NO_STARTTLS      |
            EHLO      | 250-here;250 STARTTLS      | Unusable | NO_LOGIN_OFFERED |
            EHLO      | 250-here;250-AUTH OWN;250 STARTTLS | Unusable | NO_LOGIN_OFFERED |
            AUTH      | drop                       | PutOff   | BROKEN_OFF       |
            AUTH      | silent                     | PutOff   | BROKEN_OFF       |
            AUTH      | 454 not now                | PutOff   | LATER            | 454 not now
            AUTH      | 535 wrong                  | Unusable | LOGIN_REFUSED    | 535 wrong
            """)
    void withStartTls_whatServerDoes_decides(String step, String does, String becomes, @Nullable Why why,
            @Nullable String answer) {
        try (ScriptedServer server = new ScriptedServer(Security.STARTTLS, "localhost",
                Map.of(step, does.replace(';', '\n')))) {
            MailServer well = Mails.server(server.port(), Security.STARTTLS, Mails.login(Mails.SECRET));
            Submission result = Mails.send(Mails.isMute(does) ? Mails.hasty(well) : well,
                    Mails.to("ana@example.com"));

            assertThat(Told.of(result)).isEqualTo(new Told(becomes, why, answer == null ? "" : answer));
            assertThat(server.taken()).isEmpty();
            assertThat(logins(server)).hasSize(step.equals("AUTH") ? 1 : 0);
        }
    }

    @Test
    void login_isUserAndPassword() {
        try (ScriptedServer server = new ScriptedServer(Security.TLS, "localhost", Map.of())) {
            send(server, Security.TLS, Optional.of("localhost"), Mails.login(Mails.SECRET));

            // RFC 4616: whom he acts for, if not himself; who logs in; his password; with a zero byte between them.
            assertThat(logins(server)).singleElement().satisfies(login -> assertThat(
                    new String(Base64.getDecoder().decode(login.substring("AUTH PLAIN ".length())),
                            StandardCharsets.UTF_8).split("\0"))
                    .containsExactly("", "office", Mails.SECRET));
        }
    }

    @Test
    void serverThatSpeaksInTheClear_isNoServerForTls() {
        try (ScriptedServer server = ScriptedServer.plain(Map.of())) {
            assertThat(Told.of(send(server, Security.TLS, Optional.of("localhost"), Optional.empty())))
                    .isEqualTo(new Told("Unusable", Why.NO_ENCRYPTION, ""));
            assertThat(server.commands()).noneMatch(line -> line.matches("(EHLO|AUTH|MAIL|RCPT|DATA).*"));
        }
    }

    @Test
    void whatIsSaidInTheClearAfterStartTls_isNotHeard() {
        try (ScriptedServer server = new ScriptedServer(Security.STARTTLS, "localhost",
                Map.of("STARTTLS", "220 go on\n250 forged"))) {
            assertThat(Told.of(send(server, Security.STARTTLS, Optional.of("localhost"), Optional.empty())))
                    .isEqualTo(new Told("Taken", null, "250 queued as 42"));
        }
    }

    @Test
    void certificatesThatCannotBeRead_areAProblem() {
        MailServer server = Mails.server(465, Security.TLS, Optional.empty(), Optional.of("missing"));

        assertThat(Outgoing.to(server).problems()).singleElement().satisfies(
                problem -> assertThat(problem.text()).contains("missing.pem", "PEM"));
    }

    private static List<String> logins(ScriptedServer server) {
        return server.commands().stream().filter(command -> command.startsWith("AUTH")).toList();
    }

    private static Submission send(ScriptedServer server, Security security, Optional<String> trusts,
            Optional<Login> login) {
        return Mails.send(Mails.server(server.port(), security, login, trusts), Mails.to("ana@example.com"));
    }
}
