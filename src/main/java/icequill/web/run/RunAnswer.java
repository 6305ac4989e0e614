package icequill.web.run;

import icequill.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * How far a run has come.
 *
 * @param done how many papers or forms
 * @param total of how many; empty where that is not known
 * @param result what it came to; empty before that
 * @param problems why it came to nothing
 */
public record RunAnswer(String id, RunKind kind, State state, long done, Optional<Long> total,
        Optional<RunResult> result,
        List<Problem> problems) {

    /** Where it is. */
    public enum State {
        WAITING, RUNNING, STOPPING, STOPPED, DONE, FAILED
    }

    public RunAnswer {
        problems = List.copyOf(problems);
    }

    /** Whether it will change by itself. */
    public boolean goesOn() {
        return state == State.WAITING || state == State.RUNNING || state == State.STOPPING;
    }
}
