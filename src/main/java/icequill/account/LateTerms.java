package icequill.account;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.Wording;
import icequill.problem.Check;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What may be asked of a customer who pays late. What the law of a place allows is the shop's to find out; without such
 * terms nothing is asked.
 *
 * @param rate simple interest a year, not above the cap
 * @param cap the most that the shop may ask
 * @param dayBase days that count as a year
 * @param graceDays first days past due that bear no interest, and for which no compensation is due
 * @param fromLevel the first reminder that asks for it, from 1 to 3
 * @param fixed compensation by the size of what is late; may be empty
 * @param basis why it may be asked, for the customer to read
 */
public record LateTerms(Percent rate, Percent cap, int dayBase, int graceDays, int fromLevel, List<Fixed> fixed,
        Wording basis) {

    private static final String DAY = "day";

    /** A fixed compensation for what is late of one invoice, from that amount on. */
    public record Fixed(MonetaryAmount from, MonetaryAmount amount) {}

    public LateTerms {
        Check.inRange(rate.value(), Percent.ZERO.value(), cap.value(), "rate");
        Check.inRange(dayBase, 360, 366, "dayBase");
        Check.that(graceDays >= 0, "graceDays is " + graceDays);
        fixed = List.copyOf(fixed);
    }

    /** Whether so many days past due are beyond the days of grace. */
    boolean isBeyondGrace(long daysLate) {
        return daysLate > graceDays;
    }

    /** principal x rate x days / day base, rounded once; zero within the days of grace. */
    public Explanation interest(MonetaryAmount principal, long daysLate) {
        long days = Math.max(0, daysLate - graceDays);
        Figure figure = Figure.price(principal, "").times(Figure.percent(rate)).times(Figure.term(days, DAY))
                .over(Figure.term(dayBase, DAY)).rounded(Rounding.INTEREST, principal.getCurrency());
        return Explanation.of(figure, graceDays == 0
                ? Phrase.of("reason.late-days", Fact.number(daysLate, DAY))
                : Phrase.of("reason.late-grace", Fact.number(daysLate, DAY), Fact.number(graceDays, DAY)));
    }

    /** The fixed compensation for an amount that is late; empty when there is none for so little. */
    public Optional<MonetaryAmount> fixedFor(MonetaryAmount principal) {
        return fixed.stream().filter(step -> step.from().isLessThanOrEqualTo(principal))
                .max(Comparator.comparing(Fixed::from)).map(Fixed::amount);
    }
}
