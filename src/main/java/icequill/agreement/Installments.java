package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
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
        List<Stretch> stretches = stretches(term, billing, season);
        List<BigDecimal> months = stretches.stream().map(stretch -> BigDecimal.valueOf(stretch.months())).toList();
        return IntStream.range(0, stretches.size())
                .mapToObj(i -> share(price, months, i, i + 1, stretches.get(i).begins())).toList();
    }

    /**
     * What a payment is for.
     *
     * @param ends the first day after it
     * @param months of it
     */
    private record Stretch(LocalDate begins, LocalDate ends, int months) {

        long days() {
            return ChronoUnit.DAYS.between(begins, ends);
        }
    }

    private static List<Stretch> stretches(Term term, Billing billing, Set<Month> season) {
        List<Stretch> all = new ArrayList<>();
        for (int begun = 0; begun < term.months(); begun += billing.months()) {
            LocalDate day = term.start().plusMonths(begun);
            if (billing != Billing.OPEN_MONTHS || season.isEmpty() || season.contains(day.getMonth())) {
                // The last stretch may be cut short by the end of the term, and its payment with it.
                int months = Math.min(billing.months(), term.months() - begun);
                all.add(new Stretch(day, term.start().plusMonths((long) begun + months), months));
            }
        }
        return all.isEmpty() ? List.of(new Stretch(term.start(), term.renewal(), 1)) : all;
    }

    /**
     * Payments of the rest of a term that a new owner takes over: on his first day for what is left of the stretch that is running then, by
     * days, then on the days of the term, each in proportion to what it is for.
     */
    public static List<Installment> rest(RestOfTerm rest, Term term, Billing billing, Set<Month> season) {
        List<Stretch> stretches = stretches(term, billing, season).stream()
                .filter(stretch -> stretch.ends().isAfter(rest.from())).toList();
        if (stretches.isEmpty()) {
            return List.of(share(rest.price(), List.of(BigDecimal.ONE), 0, 1, rest.from()));
        }
        Stretch running = stretches.getFirst();
        long days = running.days();
        long left = Math.min(days, ChronoUnit.DAYS.between(rest.from(), running.ends()));
        List<BigDecimal> weights = stretches.stream().map(stretch -> BigDecimal
                .valueOf(stretch.months() * (stretch.equals(running) ? left : days))).toList();
        return IntStream.range(0, stretches.size()).mapToObj(i -> {
            LocalDate begins = stretches.get(i).begins();
            Installment payment = share(rest.price(), weights, i, i + 1,
                    begins.isBefore(rest.from()) ? rest.from() : begins);
            return i > 0 || left == days
                    ? payment
                    : new Installment(1, payment.due(), payment.amount(),
                            payment.how().because(Phrase.of("reason.rest-of-stretch", new Fact.Day(begins),
                                    new Fact.Day(running.ends().minusDays(1)), Fact.number(left, "day"),
                                    Fact.number(days, "day"))));
        }).toList();
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
