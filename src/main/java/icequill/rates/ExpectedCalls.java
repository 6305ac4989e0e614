package icequill.rates;

import java.util.List;

/**
 * The kinds of calls of one cause.
 *
 * @param resets tasks, by id, that set the dirt back and are done on the call; empty for faults that are no dirt's
 */
public record ExpectedCalls(List<ExpectedCall> kinds, List<String> resets) {

    public ExpectedCalls {
        kinds = List.copyOf(kinds);
        resets = List.copyOf(resets);
    }
}
