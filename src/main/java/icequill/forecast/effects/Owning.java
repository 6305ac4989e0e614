package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.problem.Check;
import java.util.List;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What it costs to own a machine for one year or more, by the formulas of engineering economy. Amounts of a year fall at its end.
 *
 * @param price today: what is paid for a new one, or what an old one would fetch
 * @param years in order, at least one
 */
public record Owning(MonetaryAmount price, List<Year> years, Interest interest) {

    /**
     * A year of a machine.
     *
     * @param salvage what it would fetch at the end
     * @param cost of running and keeping it
     */
    public record Year(MonetaryAmount salvage, MonetaryAmount cost) {}

    public Owning {
        years = List.copyOf(years);
        Check.that(!years.isEmpty(), "no years");
    }

    /** Equal amounts a year that are worth as much as owning it for so many years. */
    public SourcedAmount equivalent(int held) {
        Figure present = Figure.price(price, "");
        for (int year = 1; year <= held; year++) {
            present = present.plus(Figure.price(of(year).cost(), "").times(interest.presentOfFuture(year)));
        }
        return owning(present.times(interest.annualOfPresent(held))
                .minus(Figure.price(of(held).salvage(), "").times(interest.annualOfFuture(held))));
    }

    /** What one year more costs, from 1. */
    public SourcedAmount marginal(int year) {
        MonetaryAmount before = year == 1 ? price : of(year - 1).salvage();
        return owning(Figure.price(before, "").times(interest.growth(1)).minus(Figure.price(of(year).salvage(), ""))
                .plus(Figure.price(of(year).cost(), "")));
    }

    /** The years after which it is cheapest to replace it by one of its kind; the fewest where several are equally cheap. */
    public int economicLife() {
        return IntStream.rangeClosed(1, years.size()).boxed()
                .reduce((best, next) -> equivalent(next).amount().isLessThan(equivalent(best).amount()) ? next : best)
                .orElseThrow();
    }

    /**
     * How many years more to keep it, 0 for none, beside a new one that costs so much a year for good. Marginal costs need not
     * rise: all numbers of years are tried, and the fewest of the cheapest taken.
     */
    public int keep(MonetaryAmount challenger) {
        Figure sum = Figure.term(0, "");
        Figure best = sum;
        int keep = 0;
        for (int year = 1; year <= years.size(); year++) {
            sum = sum.plus(Figure.price(marginal(year).amount(), "").minus(Figure.price(challenger, ""))
                    .times(interest.presentOfFuture(year)));
            if (sum.exact().compareTo(best.exact()) < 0) {
                best = sum;
                keep = year;
            }
        }
        return keep;
    }

    private Year of(int year) {
        return years.get(Check.inRange(year, 1, years.size(), "year") - 1);
    }

    private SourcedAmount owning(Figure figure) {
        CurrencyUnit currency = price.getCurrency();
        return SourcedAmount.of(figure.rounded(Rounding.OWNING, currency), Provenance.DERIVED, currency);
    }
}
