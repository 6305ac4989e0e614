package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Something used on a visit.
 *
 * @param partNumber by which its maker and technicians know it; empty where none was given
 * @param unit it is dosed in
 * @param pack the units of one pack, if it is charged by whole packs; empty if by measure
 * @param price of one unit, or of one pack
 * @param registration number of a registered sanitizer
 * @param label of a cleaner or sanitizer
 */
public record Material(String id, Wording name, Optional<String> partNumber, ChargeClass chargeClass, Unit unit,
        Optional<BigDecimal> pack,
        Price price, Optional<String> registration, Optional<Label> label, Place place) {

    /**
     * That it is used without a label to hold its use against.
     *
     * @param what was used, for the report
     */
    public Problem withoutLabel(Place at, String what) {
        return new Problem(Code.MISSING, at, what + " is of " + id + ", which has no label at " + place.reference(),
                "label: {chemistry, most, per, minutes}, as the product in hand says");
    }

    /** That more of it went into water than its label allows. */
    Problem aboveLabel(Label limit, Place at, String what, BigDecimal dose, BigDecimal water) {
        return new Problem(Code.OUT_OF_RANGE, at,
                what + " is " + dose.toPlainString() + " " + unit.symbol() + ", above its label",
                "at most " + limit.most(water).stripTrailingZeros().toPlainString() + " " + unit.symbol() + " in "
                        + water.toPlainString() + " " + limit.per().symbol());
    }

    /** How the price comes about. */
    public sealed interface Price {

        /** What it costs the shop. */
        MonetaryAmount cost();
    }

    /** A price that was set. */
    public record Given(MonetaryAmount price, MonetaryAmount cost) implements Price {}

    /** A price that follows from the cost. */
    public record MarkedUp(MonetaryAmount cost, Percent markup) implements Price {}
}
