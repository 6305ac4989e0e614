package icequill.life.telling;

import java.time.LocalDateTime;
import java.util.List;

/**
 * What a customer was told of a visit, the first time first.
 *
 * @param all none while he was not told
 */
public record Tellings(List<Telling> all) {

    /** How what he knows stands to the visit as it is planned now. */
    public enum State {
        NOT_TOLD, TOLD,
        /** Of another time: he has to be told anew. */
        TOLD_OTHERWISE,
        /** By a mail that came back: he has to be told anew. */
        CAME_BACK
    }

    public Tellings {
        all = List.copyOf(all);
    }

    /** Whether he knows of a visit that is planned so. What he was told last counts. */
    public State state(LocalDateTime begins, LocalDateTime ends) {
        if (all.isEmpty()) {
            return State.NOT_TOLD;
        }
        Telling last = all.getLast();
        if (last.cameBack()) {
            return State.CAME_BACK;
        }
        return last.begins().equals(begins) && last.ends().equals(ends) ? State.TOLD : State.TOLD_OTHERWISE;
    }
}
