package icequill.mail;

import icequill.problem.Check;
import java.util.List;
import java.util.Optional;

/**
 * Whom a mail comes from and whom it goes to.
 *
 * @param replyTo where answers are to go, if not to whom it comes from
 * @param to from 1 to 50; all of them or nobody gets it
 */
public record MailParties(MailAddress from, Optional<MailAddress> replyTo, List<MailAddress> to) {

    private static final int MOST = 50;

    public MailParties {
        to = List.copyOf(to);
        Check.inRange(to.size(), 1, MOST, "number of recipients");
    }
}
