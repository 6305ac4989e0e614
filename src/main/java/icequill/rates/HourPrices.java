package icequill.rates;

import icequill.work.Band;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What an hour of a grade is charged at and costs, each for every band by its id.
 *
 * @param work at the site
 * @param firstHour of each visit; empty where it costs what others do
 * @param travel while somebody travels; empty where it costs what work does
 * @param wage what it costs the shop, with everything that comes on top of the wage
 */
public record HourPrices(Map<String, MonetaryAmount> work, Map<String, MonetaryAmount> firstHour,
        Map<String, MonetaryAmount> travel, Map<String, MonetaryAmount> wage) {

    public HourPrices {
        work = Map.copyOf(work);
        firstHour = Map.copyOf(firstHour);
        travel = Map.copyOf(travel);
        wage = Map.copyOf(wage);
    }

    public MonetaryAmount work(Band band) {
        return Objects.requireNonNull(work.get(band.id()), band.id());
    }

    public Optional<MonetaryAmount> firstHour(Band band) {
        return Optional.ofNullable(firstHour.get(band.id()));
    }

    public Optional<MonetaryAmount> travel(Band band) {
        return Optional.ofNullable(travel.get(band.id()));
    }

    public MonetaryAmount wage(Band band) {
        return Objects.requireNonNull(wage.get(band.id()), band.id());
    }
}
