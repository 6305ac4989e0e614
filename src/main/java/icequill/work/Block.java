package icequill.work;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Minutes or visits that are sold ahead, and drawn down by later ones at the same site.
 *
 * @param count how many, at least one
 * @param on the classes of charges that it pays for; of minutes only such of labor
 * @param factors by a band's id: how many each one counts there; 1 in bands that are not named
 * @param until the last day on which a visit that uses it may begin; empty where it does not expire
 * @param place of its factors
 */
public record Block(Of of, int count, List<ChargeClass> on, Map<String, BigDecimal> factors, Optional<LocalDate> until,
        Place place) {

    /** What is sold. */
    public enum Of {
        MINUTES(Unit.MINUTE),
        /** Each with all that it charges of the block's classes. */
        VISITS(Unit.VISIT);

        private final Unit unit;

        Of(Unit unit) {
            this.unit = unit;
        }

        public Unit unit() {
            return unit;
        }
    }

    public Block {
        on = List.copyOf(on);
        factors = Map.copyOf(factors);
    }

    public BigDecimal factor(Band band) {
        return factors.getOrDefault(band.id(), BigDecimal.ONE);
    }

    /**
     * A block that was sold and billed.
     *
     * @param sale the visit or sale on whose form it stands, by id; each has one block at most
     * @param text what it was called
     * @param paid what was billed for it, before tax
     * @param used of its count, what invoices that stand took from it
     * @param atUse whether it was not taxed when it was sold, so that it is where it is used
     */
    public record Held(String sale, LocalDate sold, String text, MonetaryAmount paid, Block block, BigDecimal used,
            boolean atUse) {

        public BigDecimal left() {
            return BigDecimal.valueOf(block.count()).subtract(used);
        }

        /** The same when so much more was taken from it. */
        public Held less(BigDecimal more) {
            return new Held(sale, sold, text, paid, block, used.add(more), atUse);
        }

        /** Whether a visit that begins on a day may use it. */
        public boolean isFor(LocalDate day) {
            return !day.isBefore(sold) && block.until().filter(day::isAfter).isEmpty();
        }
    }
}
