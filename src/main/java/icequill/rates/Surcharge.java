package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.util.Set;

/**
 * A percentage on top of the discounted nets of some classes.
 *
 * @param on the classes it is figured on
 * @param chargeClass the class it is itself, for tax
 * @param applies where and when
 */
public record Surcharge(String id, Wording name, Percent percent, Set<ChargeClass> on, ChargeClass chargeClass,
        Applies applies, Place place) {

    public Surcharge {
        on = Set.copyOf(on);
    }
}
