package icequill.agreement;

import icequill.problem.Check;
import java.time.LocalDate;

/**
 * How an agreement renews itself.
 *
 * @param term that is running
 * @param refuseDays days before its last day by which the customer must have refused, from 0 to 365
 * @param renewalMonths of the term that follows, from 1 to 120
 */
public record RenewalTerms(Term term, int refuseDays, int renewalMonths) {

    public RenewalTerms {
        Check.inRange(refuseDays, 0, 365, "days to refuse");
        Check.inRange(renewalMonths, 1, 120, "months of a renewal");
    }

    /** The last day on which the customer may refuse. */
    public LocalDate lastDayToRefuse() {
        return term.lastDay().minusDays(refuseDays);
    }

    /** The first day after the renewal. */
    LocalDate endOfRenewal() {
        return term.renewal().plusMonths(renewalMonths);
    }
}
