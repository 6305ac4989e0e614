package icequill.request;

import icequill.problem.Place;
import icequill.work.Visit;
import java.util.List;
import java.util.Map;

/**
 * Who comes on the planned visits, and for how long.
 *
 * @param crew a grade for each person; empty for one of the first grade of the rates
 * @param minutes at the site, by the id of the scope; a scope without any takes the sum of its tasks' minutes
 */
public record PlannedWork(List<Visit.Named> crew, Map<String, Integer> minutes, Place place) {

    public PlannedWork {
        crew = List.copyOf(crew);
        minutes = Map.copyOf(minutes);
    }
}
