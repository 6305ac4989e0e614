package icequill.work;

import icequill.problem.Place;
import java.util.List;
import java.util.Optional;

/**
 * What was found and done at one machine.
 *
 * @param tasks done, by id
 */
public record Finding(String machine, Optional<String> complaint, Optional<String> cause, Optional<String> correction,
        List<TaskDone> tasks, List<Reading> readings, List<Recommendation> recommendations, Place place) {

    public Finding {
        tasks = List.copyOf(tasks);
        readings = List.copyOf(readings);
        recommendations = List.copyOf(recommendations);
    }

    /** A task that was carried out; its doses are charged with the outcome. */
    public record TaskDone(String task, Outcome outcome, Place place) {}

    /** A measurement, before the work and after it; either may be missing. */
    public record Reading(String what, String unit, Optional<String> before, Optional<String> after) {}

    /** A repair that was recommended, and what the customer said. */
    public record Recommendation(String text, boolean accepted) {}
}
