package icequill.files.answer;

import icequill.problem.Code;
import icequill.problem.Problem;
import java.util.Optional;

/**
 * A problem as JSON has it.
 *
 * @param file empty where it came from no file
 * @param line from 1; empty where it is not known
 * @param path keys and positions within the file
 * @param allowed what would be right; empty where nothing need be said
 */
public record WrittenProblem(Code code, Optional<String> file, Optional<Integer> line, Optional<String> path,
        String message, Optional<String> allowed) {

    static WrittenProblem of(Problem problem) {
        return new WrittenProblem(problem.code(), said(problem.place().file()),
                Optional.of(problem.place().line()).filter(line -> line > 0), said(problem.place().path()),
                problem.message(), said(problem.allowed()));
    }

    private static Optional<String> said(String text) {
        return Optional.of(text).filter(found -> !found.isEmpty());
    }
}
