package icequill.agreement;

import icequill.problem.Check;
import java.time.LocalDate;

/**
 * How an agreement renews itself.
 *
 * @param term that is running
 * @param refuseDays days before the day on which a renewal begins by which the customer must have refused, and of notice where it
 * goes on by the month; from 0 to 365
 * @param renewalMonths of the term that follows, from 1 to 120; 1 where it goes on by the month
 */
public record RenewalTerms(Term term, int refuseDays, int renewalMonths, GoingOn goingOn) {

    public RenewalTerms {
        Check.inRange(refuseDays, 0, 365, "days to refuse");
        Check.inRange(renewalMonths, 1, 120, "months of a renewal");
        Check.that(goingOn != GoingOn.BY_MONTH || renewalMonths == 1, "by the month, but for " + renewalMonths);
    }

    /** The first day of the renewal: counted from the start of the term, so that a 29 February comes back in a leap year. */
    public LocalDate begins() {
        if (goingOn != GoingOn.NEXT_SEASON) {
            return term.renewal();
        }
        int years = 1;
        while (term.start().plusYears(years).isBefore(term.renewal())) {
            years++;
        }
        return term.start().plusYears(years);
    }

    /** The term that follows; of one that goes on by the month its first month. */
    public Term next() {
        return new Term(begins(), renewalMonths);
    }

    /** The last day on which the customer may refuse. */
    public LocalDate lastDayToRefuse() {
        return begins().minusDays(refuseDays + 1L);
    }

    /** The first day after the renewal. */
    LocalDate endOfRenewal() {
        return begins().plusMonths(renewalMonths);
    }
}
