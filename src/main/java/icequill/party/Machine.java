package icequill.party;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One ice machine.
 *
 * @param where within the site
 * @param harvestRate pounds of ice in 24 hours at the rating point
 * @param evaporator of a batch machine
 * @param chargeOunces of refrigerant, by weight
 */
public record Machine(String id, String model, String where, Make make, Form form, Cooling cooling,
        Optional<Evaporator> evaporator, BigDecimal harvestRate, Optional<String> serial, Optional<LocalDate> installed,
        Optional<Warranty> warranty, Optional<String> refrigerant, Optional<BigDecimal> chargeOunces,
        Connection connection,
        Optional<String> condition) {

    /** How it makes ice. */
    public enum Make {
        BATCH, CONTINUOUS
    }

    /** How it is built. */
    public enum Form {
        HEAD, SELF_CONTAINED, REMOTE
    }

    /** What cools its condenser. */
    public enum Cooling {
        AIR, WATER
    }

    /** How it is fed with electricity. */
    public enum Connection {
        CORD_AND_PLUG, HARD_WIRED
    }

    /** How the freezing plate of a batch machine stands, and what it is plated with. */
    public record Evaporator(Position position, Plating plating) {
        public enum Position {
            VERTICAL, HORIZONTAL
        }

        public enum Plating {
            NICKEL, TIN, STAINLESS, OTHER
        }
    }

    /** The last days on which the maker pays for parts and for labor, and who settles the claim. */
    public record Warranty(LocalDate partsUntil, LocalDate laborUntil, String payer) {}
}
