package icequill.answer.history;

import icequill.work.CallSide;
import icequill.work.Finding;
import java.util.List;
import java.util.Optional;

/**
 * What was found and done at one machine, in the language of the reader.
 *
 * @param name where it stands, its model and serial number
 * @param side for which the customer called; missing where nobody wrote it down
 * @param tasks done, or to be done on a planned visit
 * @param declined what was recommended and refused
 * @param parts and filters that were put in, with how many
 * @param refrigerant what was done with it, line by line
 */
public record ToldMachine(String id, String name, Optional<String> complaint, Optional<String> cause,
        Optional<String> correction, Optional<CallSide> side, List<String> tasks, List<String> declined,
        List<Finding.Reading> readings, List<String> parts, List<String> refrigerant,
        List<Finding.Recommendation> recommendations) {

    public ToldMachine {
        tasks = List.copyOf(tasks);
        declined = List.copyOf(declined);
        readings = List.copyOf(readings);
        parts = List.copyOf(parts);
        refrigerant = List.copyOf(refrigerant);
        recommendations = List.copyOf(recommendations);
    }
}
