package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A discount per line, by the line's class.
 *
 * @param agreement the number of the agreement by which it is given
 */
public record ClassDiscount(String id, Wording name, Map<ChargeClass, Percent> percents,
        Optional<String> agreement, Place place) {

    public ClassDiscount {
        percents = Map.copyOf(percents);
    }

    public Percent of(ChargeClass chargeClass) {
        return percents.getOrDefault(chargeClass, Percent.ZERO);
    }

    /** The same without some classes. */
    ClassDiscount without(Set<ChargeClass> others) {
        Map<ChargeClass, Percent> rest = new HashMap<>(percents);
        rest.keySet().removeAll(others);
        return new ClassDiscount(id, name, rest, agreement, place);
    }
}
