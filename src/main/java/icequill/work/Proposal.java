package icequill.work;

import icequill.money.Percent;
import icequill.problem.Place;
import java.util.Optional;

/**
 * A repair that is to be quoted.
 *
 * @param machine by id
 * @param work what would be done
 * @param deposit of the total with tax, paid before the work begins; may be zero
 * @param holdsDays how many days the price holds
 */
public record Proposal(String machine, String work, Optional<Found> found, Percent deposit, int holdsDays,
        Place place) {

    /** How long a price holds when nothing else is said. */
    public static final int USUAL_DAYS = 30;

    /**
     * Where it was recommended.
     *
     * @param visit the file of the visit, from the shop folder on
     * @param recommended as the visit has it
     */
    public record Found(String visit, String recommended, Place place) {}
}
