package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import java.time.LocalDate;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a change in mid-term, such as a machine added or removed, adds to a term's price.
 *
 * @param from the first day of the change
 * @param amount negative when the price falls
 */
public record Proration(LocalDate from, MonetaryAmount amount, Explanation how) {

    private static final String DAY = "day";

    /**
     * The difference of two prices for the days left, by the days of the term, both counted with their first and last day,
     * rounded once.
     *
     * @param from a day of the term
     * @param before price of the whole term as agreed
     * @param after price of the whole term with the change, at the agreement's own rates
     */
    public static Proration of(Term term, LocalDate from, MonetaryAmount before, MonetaryAmount after) {
        CurrencyUnit currency = before.getCurrency();
        long left = term.daysFrom(from);
        Figure difference = Figure.price(after, "").minus(Figure.price(before, ""));
        Explanation how = Explanation.of(
                difference.times(Figure.term(left, DAY)).over(Figure.term(term.days(), DAY))
                        .rounded(Rounding.PRORATION, currency),
                Phrase.of("reason.days-left", new Fact.Day(from), new Fact.Day(term.lastDay()), Fact.number(left, DAY),
                        Fact.number(term.days(), DAY)));
        return new Proration(from, how.amount(currency), how);
    }
}
