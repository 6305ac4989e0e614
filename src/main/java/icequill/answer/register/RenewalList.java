package icequill.answer.register;

import icequill.answer.Listing;
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
            "for");

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
     */
    public record Row(String agreement, String id, String customer, String site, LocalDate ends,
            LocalDate refuseUntil, Optional<Window> window, Optional<LocalDate> send, List<String> laws) {

        public Row {
            laws = List.copyOf(laws);
        }

        private List<String> cells() {
            return List.of(agreement, ends.toString(), refuseUntil.toString(),
                    window.map(days -> days.first() + " to " + days.last()).orElse(""),
                    send.map(LocalDate::toString).orElse(""), String.join(", ", laws), customer + ", " + site);
        }
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
