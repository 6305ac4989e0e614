package icequill.life.mail;

/**
 * What a mail is about.
 *
 * @param number of a paper of the book
 */
public record MailMatter(String number, Occasion occasion) {

    /** Why a mail goes out. */
    public enum Occasion {
        /** A paper was issued. */
        ISSUED,
        /** The prices of a quote are soon held no longer. */
        LAPSES_SOON
    }
}
