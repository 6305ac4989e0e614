package icequill.mail;

import java.util.List;

/**
 * What a server said about a mail that it could not deliver, or not yet.
 *
 * @param messageId of the mail, without angle brackets
 * @param failed by recipient; empty where the report names none
 */
public record Returned(String messageId, List<Failed> failed) {

    /** What became of it, as RFC 3464, section 2.3.3 names it. */
    public enum Action {
        FAILED, DELAYED, DELIVERED, RELAYED, EXPANDED
    }

    /**
     * One recipient.
     *
     * @param status of RFC 3463, for example {@code 5.1.1}; empty where the report has none
     * @param diagnostic what the server that refused it said, in one line and cut; may be empty
     */
    public record Failed(String address, Action action, String status, String diagnostic) {}

    public Returned {
        failed = List.copyOf(failed);
    }
}
