package icequill.answer.quote;

import icequill.answer.amounts.MaintenanceAmounts;
import icequill.answer.forecast.PrintedWay;
import icequill.answer.price.PlanMargins;
import icequill.forecast.Cause;
import icequill.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What ways of care of a site come to, in the language of the reader. Amounts of plans, calls and the forecast are before tax.
 *
 * @param site by id
 * @param date by whose prices
 * @param validUntil the last day on which they would hold
 * @param amounts of the quote
 * @param callPrice what one call costs on average; missing, like all that follows but earnings, where only prices were asked for
 * @param callsLastYear missing where nobody counted
 * @param breakEvens from how many calls a year each plan pays
 * @param advice what the comparison sheet answers, in sentences; none without a forecast
 * @param asPrinted the figures of the comparison sheet, rounded; missing without a forecast
 * @param estimates what the guesses of dirt come to at the site; none without a forecast
 * @param earnings what the shop earns, for the owner who asked for it; missing for everybody else
 * @param notices plans that could not be priced, and why nothing is compared where it cannot be
 */
public record QuoteFigures(String site, String siteName, LocalDate date, LocalDate validUntil, Recommended recommended,
        MaintenanceAmounts amounts, Optional<MonetaryAmount> callPrice, Optional<Integer> callsLastYear,
        List<BreakEven> breakEvens, List<String> advice, Optional<List<PrintedWay>> asPrinted,
        List<PlayedBack> estimates, Optional<PlanMargins> earnings, List<Problem> notices) {

    /**
     * The cleaning interval that the site should get, and why.
     *
     * @param months between full cleanings
     */
    public record Recommended(int months, List<String> reasons) {

        public Recommended {
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * A plan beside calls.
     *
     * @param calls the fewest a year that cost at least as much; missing where so many never come
     */
    public record BreakEven(String plan, MonetaryAmount price, Optional<Integer> calls) {}

    /**
     * Of so many machines like the site's, all clean at the beginning, how many stop for dirt on one side.
     *
     * @param by6 by month 6 where nobody cleans them, and {@code by12} by month 12
     * @param cleanedBy12 on the recommended plan
     * @param said the same in a sentence
     * @param origin who says what it was worked out from
     */
    public record PlayedBack(Cause cause, int of, BigDecimal by6, BigDecimal by12, BigDecimal cleanedBy12, String said,
            String origin) {}

    public QuoteFigures {
        breakEvens = List.copyOf(breakEvens);
        advice = List.copyOf(advice);
        estimates = List.copyOf(estimates);
        notices = List.copyOf(notices);
    }
}
