package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.problem.Check;
import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What is given back, before tax, of an agreement that ends before its term is over. Where each visit is billed when it is
 * done, nothing was paid ahead, and there is none.
 *
 * @param amount not negative
 */
public record Refund(MonetaryAmount amount, Explanation how) {

    /**
     * What was paid for the term less what was earned by its end, rounded once; nothing where more was earned than paid.
     *
     * @param sites what is paid ahead at each, of the same term; at least one
     * @param lastDay of the agreement, within the term
     * @param paid for the term so far, not negative
     */
    public static Refund of(List<Prepaid> sites, Earning earning, LocalDate lastDay, MonetaryAmount paid) {
        Check.that(sites.getFirst().term().contains(lastDay), lastDay + " is not a day of the term");
        CurrencyUnit currency = sites.getFirst().currency();
        Figure earned = sites.stream().map(site -> site.earned(earning, lastDay)).reduce(Figure::plus).orElseThrow();
        Phrase why = Phrase.of("reason.refund-" + (earning == Earning.DAYS ? "days" : "visits"),
                new Fact.Amount(paid), new Fact.Day(lastDay));
        Explanation left = Explanation.of(Figure.price(paid, "").minus(earned).rounded(Rounding.REFUND, currency), why);
        MonetaryAmount amount = left.amount(currency);
        return amount.isNegative()
                ? new Refund(Amounts.zero(currency), Explanation.of(Figure.price(Amounts.zero(currency), ""), why,
                        Phrase.of("reason.refund-none",
                                new Fact.Amount(Explanation.of(earned.rounded(Rounding.REFUND, currency))
                                        .amount(currency)))))
                : new Refund(amount, left);
    }
}
