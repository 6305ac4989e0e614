package icequill.agreement;

import java.util.Optional;

/**
 * What a shop agrees on unless something else is said.
 *
 * @param cancelDays of notice within the term, from 0 to 365
 * @param refuseDays before the end by which the customer says that it is not to go on, from 0 to 365
 * @param renewalMonths for which it goes on; empty for as long as the term
 */
public record UsualTerms(int cancelDays, int refuseDays, Optional<Integer> renewalMonths) {

    private static final int DAYS = 30;

    /** Where the shop says nothing. */
    public static final UsualTerms THIRTY_DAYS = new UsualTerms(DAYS, DAYS, Optional.empty());
}
