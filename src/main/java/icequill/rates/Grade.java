package icequill.rates;

import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.Band;
import icequill.work.Qualification;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A kind of technician.
 *
 * @param hourly what an hour is charged at and costs
 * @param minimum minutes billed at least, for every band of arrival by its id
 * @param qualified what such technicians are qualified for
 */
public record Grade(String id, Wording name, HourPrices hourly, Map<String, Integer> minimum,
        Set<Qualification> qualified, Place place) {

    public Grade {
        minimum = Map.copyOf(minimum);
        qualified = Set.copyOf(qualified);
    }

    public int minimum(Band band) {
        return Objects.requireNonNull(minimum.get(band.id()), band.id());
    }
}
