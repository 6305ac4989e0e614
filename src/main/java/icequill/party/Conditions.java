package icequill.party;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;

/**
 * What is known about a site's water, air and machines besides its kind.
 *
 * @param makersMonths the shortest cleaning interval that a maker of its machines states, from 1
 * @param hardness of the water, mg/l as CaCO3
 */
public record Conditions(Optional<Integer> makersMonths, Optional<BigDecimal> hardness, Set<Air> air) {

    public static final Conditions UNKNOWN = new Conditions(Optional.empty(), Optional.empty(), Set.of());

    /** What is in the air at the machine. */
    public enum Air {
        /** Much of it, though the kind of the site does not tell. */
        YEAST, HEAT, GREASE
    }

    public Conditions {
        air = Set.copyOf(air);
    }
}
