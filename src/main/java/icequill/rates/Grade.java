package icequill.rates;

import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.Band;
import icequill.work.Qualification;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import javax.money.MonetaryAmount;

/**
 * A kind of technician.
 *
 * @param hourly price of an hour, for every band by its id
 * @param minimum minutes billed at least
 * @param qualified what such technicians are qualified for
 * @param wage what an hour costs the shop, with everything that comes on top of the wage
 */
public record Grade(String id, Wording name, Map<String, MonetaryAmount> hourly, int minimum,
        Set<Qualification> qualified, MonetaryAmount wage, Place place) {

    public Grade {
        hourly = Map.copyOf(hourly);
        qualified = Set.copyOf(qualified);
    }

    public MonetaryAmount hourly(Band band) {
        return Objects.requireNonNull(hourly.get(band.id()), band.id());
    }
}
