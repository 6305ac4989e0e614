package icequill.shop;

import icequill.ledger.entries.LifeStep;
import icequill.life.call.CallState;
import java.util.List;

/**
 * A call of the book.
 *
 * @param site by id, as it is called now
 * @param steps that led to its state, in order
 */
public record BookedCall(String id, String site, CallState.Known state, List<LifeStep> steps) {

    public BookedCall {
        steps = List.copyOf(steps);
    }

    /** Whether the names and words of people were let go with its customer. */
    public boolean isForgotten() {
        return steps.getFirst().personal().isEmpty();
    }
}
