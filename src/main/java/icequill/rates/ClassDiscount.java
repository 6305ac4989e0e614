package icequill.rates;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.util.Map;
import java.util.Optional;

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
}
