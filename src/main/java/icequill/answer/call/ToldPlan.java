package icequill.answer.call;

import icequill.life.call.CallState;
import java.time.ZonedDateTime;
import java.util.Optional;

/** Who is to go to a call, and when. */
public record ToldPlan(String person, ZonedDateTime at) {

    /** Empty where nobody is to go there. */
    public static Optional<ToldPlan> of(CallState.Known state) {
        return state instanceof CallState.Planned planned
                ? Optional.of(new ToldPlan(planned.plan().person(), planned.plan().at()))
                : Optional.empty();
    }
}
