package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.problem.Check;
import java.math.BigDecimal;
import javax.money.MonetaryAmount;

/**
 * Ice that is not made, and what it costs to buy it in bags.
 *
 * @param bag lb of ice in a bag, above 0
 * @param price of a bag
 */
public record IceLost(IceNeed need, BigDecimal bag, MonetaryAmount price) {

    private static final int HOURS = 24;

    public IceLost {
        Check.that(bag.signum() > 0, "a bag of " + bag + " lb");
        Check.that(!price.isNegative(), "a price of " + price);
    }

    /**
     * What is not made while the machine stands, lb.
     *
     * @param calls how many times it stops
     * @param hours from a stop until it makes ice again
     */
    public SourcedValue standing(BigDecimal calls, BigDecimal hours, Provenance mark) {
        Check.that(calls.signum() >= 0 && hours.signum() >= 0, calls + " calls of " + hours + " hours");
        return new SourcedValue(
                Figure.term(calls, "").times(Figure.term(hours, "h")).over(Figure.term(HOURS, "h/day"))
                        .times(need.pounds().figure()),
                Provenance.weakest(need.pounds().mark(), mark));
    }

    /** What so much ice costs in bags, a broken bag in proportion, rounded once. */
    public SourcedAmount bought(SourcedValue pounds) {
        return SourcedAmount.of(pounds.figure().over(Figure.term(bag, "lb/bag")).times(Figure.price(price, "bag"))
                .rounded(Rounding.ICE, price.getCurrency()), pounds.mark(), price.getCurrency());
    }
}
