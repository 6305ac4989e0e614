package icequill.agreement;

import icequill.party.Wording;
import icequill.problem.Place;
import java.util.List;

/**
 * A condition in which a neglected machine may be found, and the work that it adds to the first visit.
 *
 * @param tasks by id, done once more than on any other visit
 */
public record CatchUp(String id, Wording name, List<String> tasks, Place place) {

    public CatchUp {
        tasks = List.copyOf(tasks);
    }
}
