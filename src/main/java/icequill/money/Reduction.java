package icequill.money;

import javax.money.MonetaryAmount;

/** How much is taken off a price. */
public sealed interface Reduction {

    /** A fixed amount, though never more than the price. */
    record Fixed(MonetaryAmount amount) implements Reduction {}

    /** A part of the price. */
    record Part(Percent percent) implements Reduction {}
}
