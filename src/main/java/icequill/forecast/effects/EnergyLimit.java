package icequill.forecast.effects;

import icequill.party.Machine;
import icequill.party.Period;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A row of a law that limits what machines of a class may take.
 *
 * @param made when machines it holds for were made
 * @param from the harvest rate, lb in 24 hours, from which it holds
 * @param below the harvest rate before which it ends
 * @param energy kWh for 100 lb of ice
 * @param condenserWater gallons for 100 lb of ice; of machines cooled by water alone
 * @param source where it stands
 */
public record EnergyLimit(Period made, Machine.Make make, Build build, Machine.Cooling cooling, BigDecimal from,
        BigDecimal below, Line energy, Optional<Line> condenserWater, Provenance mark, String source) {

    /** What the law tells apart. */
    public enum Build {
        HEAD, SELF_CONTAINED,
        /** The condenser stands elsewhere, the compressor does not. */
        REMOTE_CONDENSER,
        /** Both stand elsewhere. */
        REMOTE_COMPRESSOR;

        /**
         * Of a machine. Which part of a remote one stands elsewhere is not on record; one with its compressor at hand may take
         * less, so energy is not overstated.
         */
        public static Build of(Machine.Form form) {
            return switch (form) {
            case HEAD -> HEAD;
            case SELF_CONTAINED -> SELF_CONTAINED;
            case REMOTE -> REMOTE_CONDENSER;
            };
        }
    }

    boolean holdsFor(Machine.Make make, Build build, Machine.Cooling cooling, LocalDate made, BigDecimal harvest) {
        return this.make == make && this.build == build && this.cooling == cooling && this.made.contains(made)
                && harvest.compareTo(from) >= 0 && harvest.compareTo(below) < 0;
    }
}
