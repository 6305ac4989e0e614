package icequill.mail;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What becomes of a mail to two recipients, whatever a server does, and wherever. */
@Tag("wide")
class SubmissionTest {

    @ParameterizedTest(name = "{0}: {1} -> {2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
            GREETING | drop                         | PutOff   | BROKEN_OFF        |
            GREETING | silent                       | PutOff   | BROKEN_OFF        |
            GREETING | 421 too busy                 | PutOff   | LATER             | 421 too busy
            GREETING | 554 no mail here             | Unusable | SERVER_REFUSES    | 554 no mail here
            GREETING | HTTP/1.1 400 what?           | PutOff   | STRANGE_ANSWER    | HTTP/1.1 400 what?
            EHLO     | drop                         | PutOff   | BROKEN_OFF        |
            EHLO     | silent                       | PutOff   | BROKEN_OFF        |
            EHLO     | 421 going down               | PutOff   | LATER             | 421 going down
            MAIL     | drop                         | PutOff   | BROKEN_OFF        |
            MAIL     | silent                       | PutOff   | BROKEN_OFF        |
            MAIL     | 451 later                    | PutOff   | LATER             | 451 later
            MAIL     | 553 not from you             | Refused  | SENDER_REFUSED    | 553 not from you
            MAIL     | 530 log in first             | Unusable | LOGIN_NEEDED      | 530 log in first
            RCPT1    | drop                         | PutOff   | BROKEN_OFF        |
            RCPT1    | silent                       | PutOff   | BROKEN_OFF        |
            RCPT1    | 450 mailbox busy             | PutOff   | LATER             | 450 mailbox busy
            RCPT1    | 550 nobody of that name      | Refused  | RECIPIENT_REFUSED | 550 nobody of that name
            RCPT2    | drop                         | PutOff   | BROKEN_OFF        |
            RCPT2    | silent                       | PutOff   | BROKEN_OFF        |
            RCPT2    | 452 too many                 | PutOff   | LATER             | 452 too many
            RCPT2    | 550 nobody of that name      | Refused  | RECIPIENT_REFUSED | 550 nobody of that name
            DATA     | drop                         | PutOff   | BROKEN_OFF        |
            DATA     | silent                       | PutOff   | BROKEN_OFF        |
            DATA     | 451 later                    | PutOff   | LATER             | 451 later
            DATA     | 554 no                       | Refused  | MAIL_REFUSED      | 554 no
            DATA     | 250 go ahead, or what?       | PutOff   | STRANGE_ANSWER    | 250 go ahead, or what?
            CONTENT  | drop                         | PutOff   | BROKEN_OFF        |
            CONTENT  | deaf                         | PutOff   | BROKEN_OFF        |
            CONTENT  | silent                       | Unknown  | ANSWER_LOST       |
            END      | drop                         | Unknown  | ANSWER_LOST       |
            END      | silent                       | Unknown  | ANSWER_LOST       |
            END      | hello                        | Unknown  | ANSWER_LOST       |
            END      | 354 more                     | Unknown  | ANSWER_LOST       |
            END      | 250 queued                   | Taken    |                   | 250 queued
            END      | 251 will forward             | Taken    |                   | 251 will forward
            END      | 421 going down               | PutOff   | LATER             | 421 going down
            END      | 451 disk full                | PutOff   | LATER             | 451 disk full
            END      | 554 looks like spam          | Refused  | MAIL_REFUSED      | 554 looks like spam
            RSET     | drop                         | Taken    |                   | 250 queued as 42
            QUIT     | drop                         | Taken    |                   | 250 queued as 42
            QUIT     | silent                       | Taken    |                   | 250 queued as 42
            """)
    void whatServerDoes_decides(String step, String does, String becomes, @Nullable Why why,
            @Nullable String answer) {
        boolean isLarge = step.equals("CONTENT");
        try (ScriptedServer server = ScriptedServer.plain(Map.of(step, does))) {
            MailServer well = Mails.server(server.port(), Security.PLAIN, Optional.empty());
            Submission result = Mails.send(Mails.isMute(does) ? Mails.hasty(well) : well,
                    isLarge ? large() : Mails.to("ana@example.com", "bo@example.com"));

            assertThat(Told.of(result)).isEqualTo(new Told(becomes, why, answer == null ? "" : answer));
            assertThat(server.taken()).hasSize(becomes.equals("Taken") && !does.startsWith("251") ? 1 : 0);
        }
    }

    private static MailMessage large() {
        return Mails.of(Mails.content("Large", "Much.\n",
                List.of(Mails.enclosure("plan.pdf", "application/pdf", Mails.bytes(8_000_000)))), "ana@example.com");
    }

    record Told(String becomes, @Nullable Why why, String answer) {

        static Told of(Submission submission) {
            return switch (submission) {
            case Submission.Taken(String answer) -> new Told("Taken", null, answer);
            case Submission.PutOff(Why why, String answer) -> new Told("PutOff", why, answer);
            case Submission.Refused(Why why, String answer, var address) -> new Told("Refused", why, answer);
            case Submission.Unusable(Why why, String answer) -> new Told("Unusable", why, answer);
            case Submission.Unknown(Why why) -> new Told("Unknown", why, "");
            };
        }
    }
}
