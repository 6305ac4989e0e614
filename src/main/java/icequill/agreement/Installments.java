package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Divides an agreement's price into payments that add up to it. */
public final class Installments {

    private Installments() {
    }

    /**
     * Payments at the beginning of each stretch of the term, by largest remainder, left-over minor units first. Their days are
     * counted from the start of the term, never from each other, so that a 31st comes back after a shorter month.
     *
     * @param price of the whole term, in whole minor units
     * @param season months in which the site is open; empty for all. Where none of the days falls into them, all is due on the first
     */
    public static List<Installment> of(Term term, MonetaryAmount price, Billing billing, Set<Month> season) {
        List<LocalDate> days = new ArrayList<>();
        List<BigDecimal> months = new ArrayList<>();
        for (int begun = 0; begun < term.months(); begun += billing.months()) {
            LocalDate day = term.start().plusMonths(begun);
            if (billing != Billing.OPEN_MONTHS || season.isEmpty() || season.contains(day.getMonth())) {
                days.add(day);
                // The last stretch may be cut short by the end of the term, and its payment with it.
                months.add(BigDecimal.valueOf(Math.min(billing.months(), term.months() - begun)));
            }
        }
        if (days.isEmpty()) {
            days.add(term.start());
            months.add(BigDecimal.ONE);
        }
        List<Installment> all = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            all.add(share(price, months, i, i + 1, days.get(i)));
        }
        return List.copyOf(all);
    }

    /**
     * A payment on the day of each visit, in proportion to what the visits would cost by themselves, evenly where they would
     * cost nothing.
     *
     * @param visits of the whole term, at least one
     * @param lists what each would cost, in the same order
     * @param price of the whole term, in whole minor units
     */
    public static List<Installment> perVisit(List<PlannedVisit> visits, List<MonetaryAmount> lists,
            MonetaryAmount price) {
        boolean free = lists.stream().allMatch(MonetaryAmount::isZero);
        List<BigDecimal> weights = lists.stream().map(list -> free ? BigDecimal.ONE : Amounts.number(list)).toList();
        return IntStream.range(0, visits.size())
                .mapToObj(i -> share(price, weights, i, i + 1, visits.get(i).date())).toList();
    }

    /** Divides an amount evenly over payments that there are already. */
    static List<Installment> over(List<Installment> payments, MonetaryAmount amount) {
        List<BigDecimal> even = payments.stream().map(payment -> BigDecimal.ONE).toList();
        List<Installment> shares = new ArrayList<>();
        for (int i = 0; i < payments.size(); i++) {
            shares.add(share(amount, even, i, payments.get(i).number(), payments.get(i).due()));
        }
        return List.copyOf(shares);
    }

    private static Installment share(MonetaryAmount amount, List<BigDecimal> weights, int index, int number,
            LocalDate due) {
        CurrencyUnit currency = amount.getCurrency();
        Explanation how = Explanation.of(
                new Figure.Share(new BigDecimal(Amounts.plain(amount)), weights, index,
                        currency.getDefaultFractionDigits()),
                Phrase.of("reason.installment", Fact.number(index + 1L, ""), Fact.number(weights.size(), "")));
        return new Installment(number, due, how.amount(currency), how);
    }
}
