package icequill.rates;

import icequill.problem.Check;
import icequill.work.Chemistry;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the label of a cleaner or sanitizer says.
 *
 * @param most of it, in the material's unit, in one unit of water
 * @param per the unit of water
 * @param minutes it is left to work
 * @param unrinsed parts per million on the strip that may stay where food touches; empty where the label does not say
 */
public record Label(Chemistry chemistry, BigDecimal most, Unit per, Minutes minutes, Optional<BigDecimal> unrinsed) {

    /** Total available chlorine in ppm that may stay unrinsed on food-contact surfaces (40 CFR 180.940(a), second hand). */
    private static final BigDecimal CHLORINE = BigDecimal.valueOf(200);

    /**
     * A span of minutes.
     *
     * @param most at least {@code least}; empty where longer does no harm
     */
    public record Minutes(int least, Optional<Integer> most) {
        public Minutes {
            Check.inRange(least, 0, most.orElse(least), "least");
        }

        public String text() {
            return most.map(limit -> "from " + least + " to " + limit + " minutes")
                    .orElse("at least " + least + " minutes");
        }
    }

    /** The most that may go into so much water. */
    public BigDecimal most(BigDecimal water) {
        return most.multiply(water);
    }

    /** The highest strip reading, in ppm, that needs no rinsing; empty where neither law nor label says. */
    public Optional<BigDecimal> strip() {
        Optional<BigDecimal> law = chemistry == Chemistry.CHLORINE ? Optional.of(CHLORINE) : Optional.empty();
        return Stream.concat(law.stream(), unrinsed.stream()).min(BigDecimal::compareTo);
    }
}
