package icequill.life.mail;

import java.time.Instant;
import java.util.Optional;

/** What happens to a mail that waits to go out. */
public sealed interface MailEvent {

    Instant at();

    /** Somebody begins to send it. */
    record Attempt(Instant at) implements MailEvent {}

    /** It lies as a file in a folder, for a person to send by a program of his own. */
    record Draft(Instant at, String file) implements MailEvent {}

    /** The server has it. */
    record Acceptance(Instant at, String answer) implements MailEvent {}

    /** The server surely has not taken it, and may take it later. */
    record Postponement(Instant at, String why) implements MailEvent {}

    /** The server will not take it. */
    record Rejection(Instant at, String why) implements MailEvent {}

    /** All of it was sent, and the server's answer did not come. */
    record Silence(Instant at, String why) implements MailEvent {}

    /**
     * It came back.
     *
     * @param report by which that is known, as the hash of its file; empty where a person says so
     */
    record Bounce(Instant at, String why, Optional<String> report) implements MailEvent {}

    /**
     * A person found out what nobody knew.
     *
     * @param wentOut otherwise it is to be sent again
     */
    record Finding(Instant at, boolean wentOut) implements MailEvent {}

    /** A person wants it tried again, at once. */
    record Retry(Instant at) implements MailEvent {}

    /** It is not to be sent any more. */
    record Withdrawal(Instant at, String reason) implements MailEvent {}
}
