package icequill.answer.paper;

import icequill.answer.Listing;
import icequill.money.Amounts;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * Installments of agreements that are due up to a day and have no invoice that stands, the longest due first.
 *
 * @param missed what is paid when a visit is done, and the visit is not recorded as done; it is not billed
 * @param problems of agreements whose installments could not be worked out
 */
public record DueInstallments(LocalDate until, List<One> installments, List<One> missed, List<Problem> problems)
        implements Listing {

    private static final List<String> HEAD = List.of("agreement", "installment", "due", "for", "net");

    /**
     * One of them.
     *
     * @param agreement by number
     * @param id of the agreement in the book
     * @param number from 1
     * @param site the name of the site, or of the first of several
     * @param net before tax
     */
    public record One(String agreement, String id, int number, LocalDate due, String customer, String site,
            MonetaryAmount net) {

        /** That its visit is not recorded as done. */
        public String missing() {
            return agreement + ": the visit that was due on " + due + " is not recorded as done, so it is not billed";
        }

        private List<String> cells() {
            return List.of(agreement, String.valueOf(number), due.toString(), customer + ", " + site,
                    net.getCurrency().getCurrencyCode() + " " + Amounts.plain(net));
        }
    }

    public DueInstallments {
        installments = List.copyOf(installments);
        missed = List.copyOf(missed);
        problems = List.copyOf(problems);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return installments.stream().map(One::cells).toList();
    }
}
