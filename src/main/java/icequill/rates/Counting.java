package icequill.rates;

import icequill.work.Band;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How minutes become billed ones.
 *
 * @param increments minutes to whose next multiple time is raised, for every band of arrival by its id
 * @param per what is raised, and has a minimum and a first hour
 */
public record Counting(Map<String, BigDecimal> increments, Per per, Optional<Overtime> overtime) {

    public enum Per {
        PERSON,
        /** Everybody's time together, by the band in which the first of them arrives. */
        VISIT
    }

    /**
     * That a long day is dearer.
     *
     * @param after minutes of one person on one visit
     * @param band whose price holds from then on, where it is the dearer one
     */
    public record Overtime(int after, Band band) {}

    public Counting {
        increments = Map.copyOf(increments);
    }

    public BigDecimal increment(Band band) {
        return Objects.requireNonNull(increments.get(band.id()), band.id());
    }
}
