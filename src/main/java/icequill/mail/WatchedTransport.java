package icequill.mail;

import jakarta.mail.MessagingException;
import jakarta.mail.Session;
import org.eclipse.angus.mail.smtp.SMTPTransport;

/**
 * A connection to a mail server that knows what was said last and what the answer was, whatever went wrong afterwards. It is never shown or
 * logged: its name holds the password.
 */
final class WatchedTransport extends SMTPTransport {

    private Heard heard = Heard.NOTHING;
    private boolean isAside;

    WatchedTransport(Session session, boolean encrypted) {
        super(session, null, "smtp", encrypted);
    }

    /** What is known of the mail that is being sent. */
    Heard heard() {
        return heard;
    }

    /** Begins another mail on the same connection. */
    void forget() {
        heard = Heard.NOTHING;
    }

    /** Known before it is sent: what fails while it leaves may have left. */
    @Override
    protected void sendCommand(String command) throws MessagingException {
        Step.of(command).ifPresentOrElse(step -> {
            isAside = false;
            heard = heard.said(step, command);
        }, () -> isAside = true);
        super.sendCommand(command);
    }

    @Override
    protected int readServerResponse() throws MessagingException {
        // Before it is read, because after an answer that is none the library says goodbye at once.
        boolean isToCommand = !isAside;
        int code = super.readServerResponse();
        if (isToCommand) {
            heard = heard.answered(code, getLastServerResponse());
        }
        return code;
    }
}
