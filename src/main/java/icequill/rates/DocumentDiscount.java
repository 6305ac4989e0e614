package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import javax.money.MonetaryAmount;

/** A discount on the whole of a paper, taken last and shared over its lines. */
public record DocumentDiscount(String id, Wording name, Off off, Place place) {

    /** How much is taken off. */
    public sealed interface Off {}

    /** A fixed amount, though never more than the lines come to. */
    public record Fixed(MonetaryAmount amount) implements Off {}

    /** A part of what the lines come to. */
    public record Part(Percent percent) implements Off {}
}
