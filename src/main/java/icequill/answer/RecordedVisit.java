package icequill.answer;

import icequill.money.Amounts;
import icequill.problem.Problem;
import icequill.visits.VisitContext;
import java.time.LocalDate;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * A visit that stands in the book, not billed yet.
 *
 * @param isPlanned whether it is still to come
 * @param gross what its invoice will come to, with tax
 * @param notices what should be known before it is billed
 */
public record RecordedVisit(String visit, String site, String customer, LocalDate day, boolean isPlanned,
        MonetaryAmount gross,
        List<Problem> notices) {

    public RecordedVisit {
        notices = List.copyOf(notices);
    }

    public static RecordedVisit of(VisitContext hand, boolean isPlanned) {
        return new RecordedVisit(hand.visit().id(), hand.site().name(), hand.site().customer().name(),
                hand.visit().day(), isPlanned, hand.taxed().gross(), hand.notices());
    }

    /** Which visit it is, and what it comes to. */
    public String summary() {
        return visit + ": " + site + ", " + day + ", " + gross.getCurrency().getCurrencyCode() + " "
                + Amounts.plain(gross) + " with tax";
    }
}
