package icequill.mail;

import icequill.problem.Check;
import java.time.ZonedDateTime;
import java.util.regex.Pattern;

/**
 * A mail, made so that the same one is the same bytes whenever it is written.
 *
 * @param messageId of RFC 5322, section 3.6.4, without its angle brackets; the same mail sent again bears the same
 */
public record MailMessage(MailParties parties, MailContent content, String messageId, ZonedDateTime date) {

    private static final int MOST_ID = 200;
    private static final String ATOM = "[A-Za-z0-9!#$%&'*+/=?^_`{|}~.-]+";
    private static final Pattern ID = Pattern.compile(ATOM + "@" + ATOM);

    public MailMessage {
        Check.that(ID.matcher(messageId).matches() && messageId.length() <= MOST_ID, "not the identifier of a mail");
    }
}
