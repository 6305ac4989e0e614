package icequill.answer;

import icequill.problem.Problem;
import java.nio.file.Path;
import java.util.List;

/**
 * The form of a visit that was typed, and where it was written.
 *
 * @param visit as the form calls it
 * @param problems that keep it from being stored as it is
 */
public record WrittenForm(String visit, Path file, List<Problem> problems) {

    public WrittenForm {
        problems = List.copyOf(problems);
    }
}
