package icequill.work;

import icequill.problem.Place;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A round of visits on one day: those of it that are billed together share one charge for coming out.
 *
 * @param shared what it bears of that; empty of one that is priced by itself
 * @param place where it is named
 */
public record Route(String name, Optional<Shared> shared, Place place) {

    /**
     * One of the visits that share the charge of the first arrival.
     *
     * @param whole at its list price
     * @param stops that share it, two or more
     * @param number of this one in the order of arrival, from 1
     */
    public record Shared(MonetaryAmount whole, int stops, int number) {}

    Route as(Shared stop) {
        return new Route(name, Optional.of(stop), place);
    }
}
