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
 * @param storage what its ice falls into; empty where nobody recorded it
 * @param groundLevel whether all of it, its condenser too, is known to be reached standing on the ground
 */
public record Machine(String id, String model, String where, Make make, Form form, Cooling cooling,
        Optional<Evaporator> evaporator, BigDecimal harvestRate, Optional<String> serial, Optional<LocalDate> installed,
        Optional<Warranty> warranty, Optional<String> refrigerant, Optional<BigDecimal> chargeOunces,
        Connection connection,
        Optional<Storage> storage, boolean groundLevel, Optional<String> condition) {

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

    /** What ice falls into. */
    public enum Storage {
        /** Nothing moves in it. */
        BIN,
        /** An auger or agitator moves in it. */
        DISPENSER
    }

    /**
     * Whether an auger or agitator may turn where its ice lies or falls: of every machine that makes ice without a break, and of
     * every other but one over a plain bin that is on record.
     */
    public boolean ejectsByAuger() {
        return make == Make.CONTINUOUS || !storage.equals(Optional.of(Storage.BIN));
    }

    /** Whether pulling a plug takes all power off it; of a remote one part is fed elsewhere. */
    public boolean isUnplugged() {
        return connection == Connection.CORD_AND_PLUG && form != Form.REMOTE;
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
