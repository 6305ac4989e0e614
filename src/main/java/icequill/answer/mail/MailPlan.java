package icequill.answer.mail;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.life.mail.MailCopy;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The mails that would be written about some papers, and the papers about which none would be.
 *
 * @param mails by the days of their papers, the oldest first
 * @param leftOut in the same order
 */
public record MailPlan(List<Planned> mails, List<LeftOut> leftOut) implements Listing {

    private static final List<String> HEAD = List.of("paper", "date", "customer", "mail");

    /**
     * A mail that would be written.
     *
     * @param paper its number
     * @param customer by id
     * @param copy as it would go out now
     */
    public record Planned(String paper, LocalDate date, String customer, String customerName, MailCopy copy) {

        private List<String> cells() {
            return List.of(paper, date.toString(), customerName, "to " + String.join(", ", copy.to()));
        }
    }

    /**
     * A paper about which no mail would be written.
     *
     * @param paper its number
     * @param mail that is about it already; missing where none is
     * @param problems why none can be written
     */
    public record LeftOut(String paper, LocalDate date, String customerName, Optional<MailEntry> mail,
            List<Problem> problems) {
        public LeftOut {
            problems = List.copyOf(problems);
        }

        private List<String> cells() {
            return List.of(paper, date.toString(), customerName, "none: " + Stream.concat(
                    mail.map(one -> one.mail() + " " + ConstantKey.words(one.state().name())).stream(),
                    problems.stream().map(Problem::message)).collect(Collectors.joining("; ")));
        }
    }

    public MailPlan {
        mails = List.copyOf(mails);
        leftOut = List.copyOf(leftOut);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return Stream.concat(mails.stream().map(Planned::cells), leftOut.stream().map(LeftOut::cells)).toList();
    }
}
