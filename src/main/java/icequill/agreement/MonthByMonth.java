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
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * An agreement that goes on by the month after its term. Days are counted from the start of the term, so that a 31st comes back after a
 * shorter month.
 *
 * @param noticed the day on which notice was given; empty while it goes on
 */
public record MonthByMonth(Term term, int noticeDays, Optional<LocalDate> noticed) {

    /** Payments after the term have numbers of their own, since a change may yet add one to those of the term. */
    static final int FIRST = 1001;

    private static final int YEAR = 12;

    /** The last day: of the term, or the first end of a month after it that leaves the days of notice; empty while it goes on. */
    public Optional<LocalDate> lastDay() {
        return noticed.map(day -> {
            int after = 0;
            while (begins(after).minusDays(1).isBefore(day.plusDays(noticeDays))) {
                after++;
            }
            return begins(after).minusDays(1);
        });
    }

    /** Whether a payment of a number is for a month after the term. */
    public static boolean isAfterTerm(int payment) {
        return payment >= FIRST;
    }

    /** The first day of a month after the term, the first of them 0. */
    private LocalDate begins(int month) {
        return term.start().plusMonths((long) term.months() + month);
    }

    /** Whether it goes on, after its term, on a day. */
    public boolean contains(LocalDate day) {
        return !day.isBefore(term.renewal()) && lastDay().filter(day::isAfter).isEmpty();
    }

    /** The term with the months after it that begin by a day, none after the last one. */
    public Term until(LocalDate day) {
        return new Term(term.start(), Math.min(Term.MOST_MONTHS, term.months() + after(day)));
    }

    private int after(LocalDate day) {
        int after = 0;
        while (!begins(after).isAfter(day) && contains(begins(after))) {
            after++;
        }
        return after;
    }

    /**
     * A payment for each month after the term that begins by a day: of each twelve the year's price by largest remainder.
     *
     * @param yearPrice in whole minor units
     * @param season months in which something is asked for; empty for all
     */
    public List<Installment> payments(LocalDate day, MonetaryAmount yearPrice, Set<Month> season) {
        List<Installment> all = new ArrayList<>();
        for (int month = 0; month < after(day); month++) {
            LocalDate due = begins(month);
            int year = month - month % YEAR;
            List<LocalDate> paid = new ArrayList<>();
            for (int i = year; i < year + YEAR; i++) {
                if (season.isEmpty() || season.contains(begins(i).getMonth())) {
                    paid.add(begins(i));
                }
            }
            if (paid.contains(due)) {
                all.add(payment(FIRST + month, due, yearPrice, paid.size(), paid.indexOf(due)));
            }
        }
        return List.copyOf(all);
    }

    private static Installment payment(int number, LocalDate due, MonetaryAmount yearPrice, int paid, int index) {
        List<BigDecimal> even = Collections.nCopies(paid, BigDecimal.ONE);
        Explanation how = Explanation.of(
                new Figure.Share(new BigDecimal(Amounts.plain(yearPrice)), even, index,
                        yearPrice.getCurrency().getDefaultFractionDigits()),
                Phrase.of("reason.month-after-term", new Fact.Amount(yearPrice), Fact.number(paid, "")));
        return new Installment(number, due, how.amount(yearPrice.getCurrency()), how);
    }
}
