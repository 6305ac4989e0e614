package icequill.life.mail;

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
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.time.Instant;
import java.util.Optional;

/** Where a mail stands. */
public sealed interface MailState {

    /** When the last step led to it. */
    Instant since();

    /**
     * It is to be sent.
     *
     * @param begun when it began to wait, from which on patience is counted
     * @param tries so far
     * @param next when it may be tried
     * @param why it was put off; empty before it was
     */
    record Waiting(Instant begun, Instant since, int tries, Instant next, Optional<String> why) implements MailState {}

    /** Somebody is sending it. */
    record Sending(Waiting before, Instant since) implements MailState {}

    /** It lies in a folder, for a person to send. */
    record Drafted(Waiting before, Instant since, String file) implements MailState {}

    /** It went out. */
    record Sent(Instant since, String answer) implements MailState {}

    /** It may have gone out or not. */
    record Unknown(Waiting before, Instant since, String why) implements MailState {}

    /** No server takes it. */
    record Refused(Instant since, String why) implements MailState {}

    /** It came back. */
    record Returned(Instant since, String why) implements MailState {}

    /** It does not go out. */
    record Withdrawn(Instant since, String reason) implements MailState {}

    /** One that was just written. */
    static MailState written(Instant now) {
        return waiting(now);
    }

    /** The same at a moment: of one that is being sent for too long nobody knows. */
    default MailState at(Instant now) {
        return this instanceof Sending(Waiting before, Instant since)
                && now.isAfter(since.plus(Patience.OF_ONE_TRY))
                        ? new Unknown(before, since, "the program ended while it was being sent")
                        : this;
    }

    /** Whether it may be sent now. */
    default boolean isDue(Instant now) {
        return this instanceof Waiting waiting && !now.isBefore(waiting.next());
    }

    /** Where it stands after something happened, or why that cannot be. */
    static Validated<MailState> step(MailState before, MailEvent event) {
        MailState state = before.at(event.at());
        return switch (event) {
        case Attempt begun when state.isDue(begun.at()) && state instanceof Waiting waiting ->
            Validated.valid(new Sending(waiting, begun.at()));
        case Draft draft when state instanceof Waiting waiting ->
            Validated.valid(new Drafted(waiting, draft.at(), draft.file()));
        case Acceptance taken when state instanceof Sending -> Validated.valid(new Sent(taken.at(), taken.answer()));
        case Postponement later when state instanceof Sending sending -> Validated.valid(putOff(sending, later));
        case Rejection no when state instanceof Sending -> Validated.valid(new Refused(no.at(), no.why()));
        case Silence lost when state instanceof Sending sending ->
            Validated.valid(new Unknown(sending.before(), lost.at(), lost.why()));
        case Bounce back when state instanceof Sent || state instanceof Unknown || state instanceof Drafted ->
            Validated.valid(new Returned(back.at(), back.why()));
        case Finding found when state instanceof Unknown || state instanceof Drafted ->
            Validated.valid(found.wentOut() ? new Sent(found.at(), "") : waiting(found.at()));
        case Retry again when state instanceof Waiting || state instanceof Refused || state instanceof Returned ->
            Validated.valid(waiting(again.at()));
        case Withdrawal gone when state instanceof Waiting || state instanceof Drafted || state instanceof Refused
                || state instanceof Returned ->
            Validated.valid(new Withdrawn(gone.at(), gone.reason()));
        default -> refused(state);
        };
    }

    private static Waiting waiting(Instant now) {
        return new Waiting(now, now, 0, now, Optional.empty());
    }

    private static MailState putOff(Sending sending, Postponement later) {
        Waiting before = sending.before();
        int tries = before.tries() + 1;
        return later.at().isAfter(before.begun().plus(Patience.IN_ALL))
                ? new Refused(later.at(), later.why())
                : new Waiting(before.begun(), later.at(), tries, Patience.next(later.at(), tries),
                        Optional.of(later.why()));
    }

    private static Validated<MailState> refused(MailState state) {
        return switch (state) {
        case Waiting waiting when waiting.tries() > 0 -> no("the mail was put off until " + waiting.next(),
                "then, or at once when a person has it tried again");
        case Waiting waiting -> no("the mail waits to be sent", "that it is sent or withdrawn");
        case Sending sending -> no("the mail is being sent", "what comes of it");
        case Drafted drafted -> no("the mail lies in " + drafted.file(), "that it was sent from there, or not");
        case Sent sent -> no("the mail was sent", "that it came back");
        case Unknown unknown -> no("nobody knows whether the mail went out", "first that it did, or did not");
        case Refused over -> no("the mail was refused", "that it is tried again or withdrawn");
        case Returned back -> no("the mail came back", "that it is tried again or withdrawn");
        case Withdrawn gone -> no("the mail was withdrawn", "another mail");
        };
    }

    private static Validated<MailState> no(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }
}
