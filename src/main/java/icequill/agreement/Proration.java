package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import java.time.LocalDate;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What a change in mid-term, such as a machine added or removed, adds to the payments still to come.
 *
 * @param from the first day of the change
 * @param amount negative when the price falls
 * @param shares one for each payment due on that day or later, adding up to the amount; one on that day when none is left
 */
public record Proration(LocalDate from, MonetaryAmount amount, Explanation how, List<Installment> shares) {

    private static final String DAY = "day";

    public Proration {
        shares = List.copyOf(shares);
    }

    /**
     * The difference of two prices for the days left, by the days of the term, both counted with their first and last day,
     * rounded once.
     *
     * @param from a day of the term
     * @param before price of the whole term as agreed
     * @param after price of the whole term with the change, at the agreement's own rates
     * @param payments of the agreement
     */
    public static Proration of(Term term, LocalDate from, MonetaryAmount before, MonetaryAmount after,
            List<Installment> payments) {
        CurrencyUnit currency = before.getCurrency();
        long left = term.daysFrom(from);
        Figure difference = Figure.price(after, "").minus(Figure.price(before, ""));
        Explanation how = Explanation.of(
                difference.times(Figure.term(left, DAY)).over(Figure.term(term.days(), DAY))
                        .rounded(Rounding.PRORATION, currency),
                Phrase.of("reason.days-left", new Fact.Day(from), new Fact.Day(term.lastDay()), Fact.number(left, DAY),
                        Fact.number(term.days(), DAY)));
        MonetaryAmount amount = how.amount(currency);
        List<Installment> open = payments.stream().filter(payment -> !payment.due().isBefore(from)).toList();
        List<Installment> shares = open.isEmpty()
                ? List.of(new Installment(payments.size() + 1, from, amount, how))
                : Installments.over(open, amount);
        return new Proration(from, amount, how, shares);
    }
}
