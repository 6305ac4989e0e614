package icequill.work;

import icequill.money.Percent;
import icequill.problem.Place;
import java.util.List;
import java.util.Optional;

/**
 * A repair that is to be quoted.
 *
 * @param machine by id
 * @param work what would be done
 * @param deposit of the total before tax, paid before the work begins; may be zero
 * @param stages parts of the total, in percent that add up to a hundred, in which it is paid while the work goes on; empty for one
 * @param retainage that is held back of each stage until the end; may be zero
 * @param holdsDays how many days the price holds
 */
public record Proposal(String machine, String work, Optional<Found> found, Percent deposit, List<Percent> stages,
        Percent retainage, int holdsDays, Place place) {

    public Proposal {
        stages = List.copyOf(stages);
    }

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
