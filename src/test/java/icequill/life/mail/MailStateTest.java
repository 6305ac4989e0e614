package icequill.life.mail;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.life.mail.MailEvent.Acceptance;
import icequill.life.mail.MailEvent.Attempt;
import icequill.life.mail.MailEvent.Bounce;
import icequill.life.mail.MailEvent.Draft;
import icequill.life.mail.MailEvent.Finding;
import icequill.life.mail.MailEvent.Postponement;
import icequill.life.mail.MailEvent.Rejection;
import icequill.life.mail.MailEvent.Retry;
import icequill.life.mail.MailEvent.Silence;
import icequill.life.mail.MailEvent.Withdrawal;
import icequill.life.mail.MailState.Drafted;
import icequill.life.mail.MailState.Refused;
import icequill.life.mail.MailState.Returned;
import icequill.life.mail.MailState.Sending;
import icequill.life.mail.MailState.Sent;
import icequill.life.mail.MailState.Unknown;
import icequill.life.mail.MailState.Waiting;
import icequill.life.mail.MailState.Withdrawn;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MailStateTest {

    private static final Instant NINE = Instant.parse("2026-06-02T13:00:00Z");
    private static final Instant TEN = Instant.parse("2026-06-02T14:00:00Z");
    private static final Waiting WAITING = new Waiting(NINE, NINE, 0, NINE, Optional.empty());
    private static final Waiting ANEW = new Waiting(TEN, TEN, 0, TEN, Optional.empty());
    private static final Waiting PUT_OFF = new Waiting(NINE, NINE, 2, TEN, Optional.of("busy"));
    private static final Sending SENDING = new Sending(WAITING, TEN);
    private static final Sending LONG_AGO = new Sending(WAITING, NINE.minusSeconds(1));
    private static final Drafted DRAFTED = new Drafted(WAITING, NINE, "outbox/INV-1.eml");
    private static final Sent SENT = new Sent(NINE, "250 ok");
    private static final Unknown UNKNOWN = new Unknown(WAITING, NINE, "cut off");
    private static final Refused REFUSED = new Refused(NINE, "550 nobody here");
    private static final Returned RETURNED = new Returned(NINE, "5.1.1");
    private static final Withdrawn WITHDRAWN = new Withdrawn(NINE, "on paper");
    private static final Attempt TRY = new Attempt(TEN);
    private static final Bounce BOUNCE = new Bounce(TEN, "5.1.1", Optional.empty());
    private static final Retry AGAIN = new Retry(TEN);
    private static final Withdrawal WITHDRAW = new Withdrawal(TEN, "on paper");
    private static final Finding WENT_OUT = new Finding(TEN, true);
    private static final Finding DID_NOT = new Finding(TEN, false);

    private static final String SENT_ALREADY = "the mail was sent (that it came back)";
    private static final String NOBODY_KNOWS = "nobody knows whether the mail went out (first that it did, or did not)";
    private static final String NOT_BEFORE = "the mail waits to be sent (that it is sent or withdrawn)";

    /** A state, what happens, and where it stands then; or the sentence of why it cannot. */
    record Row(MailState from, MailEvent event, Object to) {}

    static Stream<Row> table() {
        return Stream.of(new Row(WAITING, TRY, SENDING), new Row(WAITING, AGAIN, ANEW),
                new Row(WAITING, new Draft(TEN, "outbox/INV-1.eml"), new Drafted(WAITING, TEN, "outbox/INV-1.eml")),
                new Row(WAITING, WITHDRAW, new Withdrawn(TEN, "on paper")),
                new Row(WAITING, new Acceptance(TEN, "250"), NOT_BEFORE), new Row(WAITING, BOUNCE, NOT_BEFORE),
                new Row(WAITING, WENT_OUT, NOT_BEFORE),
                new Row(PUT_OFF, new Attempt(TEN.minusSeconds(1)),
                        "the mail was put off until 2026-06-02T14:00:00Z (then, or at once when a person has it tried again)"),
                new Row(PUT_OFF, TRY, new Sending(PUT_OFF, TEN)), new Row(PUT_OFF, AGAIN, ANEW),
                new Row(SENDING, new Acceptance(TEN, "250 ok"), new Sent(TEN, "250 ok")),
                new Row(SENDING, new Postponement(TEN, "451 later"),
                        new Waiting(NINE, TEN, 1, TEN.plusSeconds(1_800), Optional.of("451 later"))),
                new Row(SENDING, new Rejection(TEN, "550 nobody"), new Refused(TEN, "550 nobody")),
                new Row(SENDING, new Silence(TEN, "cut off"), new Unknown(WAITING, TEN, "cut off")),
                new Row(SENDING, TRY, "the mail is being sent (what comes of it)"),
                new Row(SENDING, WITHDRAW, "the mail is being sent (what comes of it)"),
                new Row(SENDING, WENT_OUT, "the mail is being sent (what comes of it)"),
                new Row(LONG_AGO, WENT_OUT, new Sent(TEN, "")), new Row(LONG_AGO, DID_NOT, ANEW),
                new Row(LONG_AGO, TRY, NOBODY_KNOWS), new Row(DRAFTED, WENT_OUT, new Sent(TEN, "")),
                new Row(DRAFTED, DID_NOT, ANEW), new Row(DRAFTED, BOUNCE, new Returned(TEN, "5.1.1")),
                new Row(DRAFTED, WITHDRAW, new Withdrawn(TEN, "on paper")),
                new Row(DRAFTED, TRY, "the mail lies in outbox/INV-1.eml (that it was sent from there, or not)"),
                new Row(SENT, BOUNCE, new Returned(TEN, "5.1.1")), new Row(SENT, TRY, SENT_ALREADY),
                new Row(SENT, AGAIN, SENT_ALREADY), new Row(SENT, WITHDRAW, SENT_ALREADY),
                new Row(UNKNOWN, WENT_OUT, new Sent(TEN, "")), new Row(UNKNOWN, DID_NOT, ANEW),
                new Row(UNKNOWN, BOUNCE, new Returned(TEN, "5.1.1")), new Row(UNKNOWN, TRY, NOBODY_KNOWS),
                new Row(UNKNOWN, AGAIN, NOBODY_KNOWS), new Row(UNKNOWN, WITHDRAW, NOBODY_KNOWS),
                new Row(REFUSED, AGAIN, ANEW), new Row(REFUSED, WITHDRAW, new Withdrawn(TEN, "on paper")),
                new Row(REFUSED, TRY, "the mail was refused (that it is tried again or withdrawn)"),
                new Row(RETURNED, AGAIN, ANEW), new Row(RETURNED, WITHDRAW, new Withdrawn(TEN, "on paper")),
                new Row(RETURNED, TRY, "the mail came back (that it is tried again or withdrawn)"),
                new Row(WITHDRAWN, TRY, "the mail was withdrawn (another mail)"),
                new Row(WITHDRAWN, AGAIN, "the mail was withdrawn (another mail)"));
    }

    @ParameterizedTest
    @MethodSource("table")
    void step_asTheTableSays(Row row) {
        Validated<MailState> after = MailState.step(row.from(), row.event());

        assertThat(after.found().<Object>map(state -> state)
                .orElseGet(() -> after.problems().stream().map(Problem::text).findFirst().orElseThrow()))
                .isEqualTo(row.to());
    }

    /** RFC 5321, 4.5.4.1: thirty minutes or more between two tries; given up after four or five days or more. */
    @Test
    void putOffAgainAndAgain_isTriedLaterEachTimeAndGivenUpAfterFiveDays() {
        MailState state = MailState.written(NINE);
        List<Duration> waits = new ArrayList<>();
        Instant now = NINE;
        while (state instanceof Waiting waiting) {
            waits.add(Duration.between(now, waiting.next()));
            now = waiting.next();
            state = MailState.step(state, new Attempt(now)).then(sending(now)).orElseThrow();
        }

        assertThat(waits).startsWith(Duration.ZERO, Duration.ofMinutes(30), Duration.ofHours(1), Duration.ofHours(2),
                Duration.ofHours(4), Duration.ofHours(8), Duration.ofHours(8));
        assertThat(waits.subList(1, waits.size())).allMatch(wait -> wait.compareTo(Duration.ofMinutes(30)) >= 0);
        assertThat(state).isEqualTo(new Refused(now, "451 later"));
        assertThat(Duration.between(NINE, now)).isBetween(Duration.ofDays(5), Duration.ofDays(5).plusHours(8));
    }

    private static Function<MailState, Validated<MailState>> sending(Instant now) {
        return state -> MailState.step(state, new Postponement(now, "451 later"));
    }
}
