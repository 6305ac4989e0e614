package icequill.answer.mail;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.problem.Problem;
import java.util.List;

/**
 * Mails, those first that a person has to look after.
 *
 * @param problems of what could not be done with some
 */
public record MailList(List<MailEntry> mails, List<Problem> problems) implements Listing {

    private static final List<String> HEAD = List.of("mail", "state", "since", "customer", "why");

    public MailList {
        mails = List.copyOf(mails);
        problems = List.copyOf(problems);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return mails.stream().map(mail -> List.of(mail.mail(), ConstantKey.words(mail.state().name()),
                MailEntry.minute(mail.since()), mail.customerName(), mail.why().orElse(""))).toList();
    }
}
