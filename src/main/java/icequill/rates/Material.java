package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Something used on a visit.
 *
 * @param unit it is dosed in
 * @param pack the units of one pack, if it is charged by whole packs; empty if by measure
 * @param price of one unit, or of one pack
 * @param registration number of a registered sanitizer
 * @param label of a cleaner or sanitizer
 */
public record Material(String id, Wording name, ChargeClass chargeClass, Unit unit, Optional<BigDecimal> pack,
        Price price,
        Optional<String> registration, Optional<Label> label, Place place) {

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
