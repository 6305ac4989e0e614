package icequill.rates;

import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.Band;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The charge for coming out.
 *
 * @param zones by rising distance
 * @param beyond price of each mile past the last zone, charged for both ways
 * @param perMile price of each mile driven, both ways, on top of the zone's; empty where miles are in the zones' prices
 * @param includes minutes of the first person that it pays for
 * @param eachDay whether each day on which somebody comes pays one, by its own band; otherwise one is for the whole visit
 * @param mileCost what a mile driven costs the shop
 * @param speed miles an hour, by which the time on the road is reckoned that the shop pays; empty where it pays none
 */
public record ServiceCallRates(List<Zone> zones, MonetaryAmount beyond, Optional<MonetaryAmount> perMile,
        int includes, boolean eachDay, MonetaryAmount mileCost, Optional<BigDecimal> speed, Place place) {

    /**
     * Sites up to a distance.
     *
     * @param upTo one-way miles, inclusive
     * @param prices for every band by its id
     */
    public record Zone(String id, Wording name, BigDecimal upTo, Map<String, MonetaryAmount> prices, Place place) {
        public Zone {
            prices = Map.copyOf(prices);
        }

        public MonetaryAmount price(Band band) {
            return Objects.requireNonNull(prices.get(band.id()), band.id());
        }
    }

    public ServiceCallRates {
        zones = zones.stream().sorted(Comparator.comparing(Zone::upTo)).toList();
    }

    /** The zone of a distance; empty beyond the last. */
    public Optional<Zone> zone(BigDecimal miles) {
        return zones.stream().filter(zone -> miles.compareTo(zone.upTo()) <= 0).findFirst();
    }
}
