package icequill.life.mail;

import java.util.List;
import java.util.Optional;

/**
 * What a mail says of the paper that it brings, in the paper's language and out of nothing else than the paper.
 *
 * @param title of the paper, as its subject begins
 * @param facts by which the customer's office files it: order, store
 * @param sentences about it
 * @param printed the mail address on the paper
 */
public record MailLetter(String title, List<String> facts, List<String> sentences, Optional<String> printed) {

    public MailLetter {
        facts = List.copyOf(facts);
        sentences = List.copyOf(sentences);
    }
}
