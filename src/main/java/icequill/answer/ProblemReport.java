package icequill.answer;

import icequill.problem.Problem;
import java.util.List;

/** All that is wrong with what a command was given; nothing was written then. */
public record ProblemReport(List<Problem> problems) {

    public ProblemReport {
        problems = List.copyOf(problems);
    }
}
