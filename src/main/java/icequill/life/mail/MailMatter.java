package icequill.life.mail;

import icequill.party.Contact;
import icequill.party.Language;
import java.util.Optional;

/** What a mail is about. */
public sealed interface MailMatter {

    /** The number of a paper, or the name of its file. */
    String name();

    /** Why a mail goes out. */
    enum Occasion {
        /** A paper was issued. */
        ISSUED,
        /** The prices of a quote are soon held no longer. */
        LAPSES_SOON
    }

    /**
     * A paper of the book.
     *
     * @param name its number
     */
    record Numbered(String name, Occasion occasion) implements MailMatter {}

    /**
     * A paper without a number, whose file is kept with the mail.
     *
     * @param name of the file, without its ending
     * @param purpose for what those are there who get it
     * @param hash of the file, SHA-256 in hexadecimal digits
     * @param tells what its customer knows once he has it; empty where nothing follows from that
     * @param letter empty where the customer was forgotten since
     */
    record Loose(String name, Contact.Purpose purpose, Language language, String hash,
            Optional<MailTells> tells, Optional<MailLetter> letter) implements MailMatter {}
}
