package icequill.agreement;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A notice of renewal that went to a customer.
 *
 * @param paper what was sent, as the office calls it
 * @param tracking by which it can be followed
 * @param received empty as long as nobody knows
 * @param by who sent it; empty where nobody is named, or the customer was forgotten since
 * @param cameBack on which day, unread; empty as long as nobody knows of that
 */
public record SentNotice(LocalDate sent, NoticeRule.Delivery way, Optional<String> paper, Optional<String> tracking,
        Optional<LocalDate> received, Optional<String> by, Optional<LocalDate> cameBack) {

    /** One of which nothing came back. */
    public SentNotice(LocalDate sent, NoticeRule.Delivery way, Optional<String> paper, Optional<String> tracking,
            Optional<LocalDate> received, Optional<String> by) {
        this(sent, way, paper, tracking, received, by, Optional.empty());
    }

    /** The same once it is known to have arrived. */
    public SentNotice arrived(LocalDate day) {
        return new SentNotice(sent, way, paper, tracking, Optional.of(day), by, cameBack);
    }

    /** The same once it is known to have come back. */
    public SentNotice cameBack(LocalDate day) {
        return new SentNotice(sent, way, paper, tracking, received, by, Optional.of(day));
    }
}
