package icequill.answer.register;

import icequill.agreement.NoticeRule.Delivery;
import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Agreements whose terms end and that go on unless somebody refuses, with the days on which that is to be told, by the laws on record and
 * the agreement itself; the first window first. A proposal, to be checked with an adviser.
 *
 * @param from the first day that was looked at
 * @param until the last day on which a term ends
 * @param problems of agreements that could not be read
 */
public record RenewalList(LocalDate from, LocalDate until, List<Row> renewals, List<Problem> problems)
        implements
        Listing {

    private static final List<String> HEAD = List.of("agreement", "ends", "refuse until", "notice", "send on", "laws",
            "next", "for");

    /**
     * One of them.
     *
     * @param agreement by number
     * @param id of it in the book
     * @param ends the last day of the term
     * @param refuseUntil the last day on which the customer can say no
     * @param window on which the notice may be given; missing where no law says so, or where there is no day that suits all
     * @param send a working day within it; missing where it is over
     * @param laws on record that concern it, by id
     * @param why no day to send it on is proposed, and what else must be known, in the reader's language
     * @param notices that were sent, in their order
     */
    public record Row(String agreement, String id, String customer, String site, LocalDate ends,
            LocalDate refuseUntil, Optional<Window> window, Optional<LocalDate> send, List<String> laws,
            List<String> why, List<Sent> notices, Todo next) {

        public Row {
            laws = List.copyOf(laws);
            why = List.copyOf(why);
            notices = List.copyOf(notices);
        }

        private List<String> cells() {
            return List.of(agreement, ends.toString(), refuseUntil.toString(),
                    window.map(days -> days.first() + " to " + days.last()).orElse(""),
                    send.map(LocalDate::toString).orElse(""), String.join(", ", laws), ConstantKey.words(next.name()),
                    customer + ", " + site);
        }
    }

    /**
     * A notice that was sent.
     *
     * @param paper what was sent, as the office calls it
     * @param tracking by which it can be followed
     * @param received missing as long as nobody knows
     * @param served whether it counts, by the laws on record and the agreement
     * @param why it does not, in the reader's language
     */
    public record Sent(LocalDate sent, Delivery way, Optional<String> paper, Optional<String> tracking,
            Optional<LocalDate> received, boolean served, List<String> why) {
        public Sent {
            why = List.copyOf(why);
        }
    }

    /** What is to be done about a renewal. */
    public enum Todo {
        /** No law on record asks for a notice; the customer may still refuse. */
        NOTHING,
        /** The days for the notice are still to come. */
        WAIT,
        /** The notice is to be sent. */
        SEND,
        /** One was sent that counts; it is not known whether it arrived. */
        ASK_WHETHER_IT_ARRIVED,
        /** One that counts arrived; the customer may still refuse. */
        SERVED,
        /** The days for it are over, and none counts: whether it renews itself is for an adviser. */
        TOO_LATE,
        /** Nobody refused in time. */
        RENEW
    }

    /** From the first to the last day. */
    public record Window(LocalDate first, LocalDate last) {}

    public RenewalList {
        renewals = List.copyOf(renewals);
        problems = List.copyOf(problems);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return renewals.stream().map(Row::cells).toList();
    }
}
