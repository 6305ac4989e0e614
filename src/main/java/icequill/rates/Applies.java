package icequill.rates;

import icequill.party.Address;
import icequill.problem.Place;
import java.util.Set;

/**
 * Where and when a fee or surcharge applies.
 *
 * @param always on every visit; otherwise only where a visit names it
 * @param regions where it is allowed, such as US-NY or DE; empty for everywhere
 */
public record Applies(boolean always, Set<String> regions, Place place) {

    public Applies {
        regions = Set.copyOf(regions);
    }

    /** The same, only where a visit names it. */
    Applies onlyNamed() {
        return new Applies(false, regions, place);
    }

    /** Whether it is allowed at an address: in its country, or in its region of it. */
    public boolean allows(Address address) {
        return regions.isEmpty() || regions.contains(address.country())
                || regions.contains(address.country() + "-" + address.region());
    }
}
