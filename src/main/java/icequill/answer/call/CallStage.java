package icequill.answer.call;

import icequill.life.call.CallState;

/** Where a call is in its life. */
public enum CallStage {
    TAKEN, PLANNED, DONE, CLOSED, WITHDRAWN;

    public static CallStage of(CallState.Known state) {
        return switch (state) {
        case CallState.Taken taken -> TAKEN;
        case CallState.Planned planned -> PLANNED;
        case CallState.Done done -> DONE;
        case CallState.Closed closed -> CLOSED;
        case CallState.Withdrawn withdrawn -> WITHDRAWN;
        };
    }

    /** Whether somebody still has to go there. */
    public boolean isWaiting() {
        return this == TAKEN || this == PLANNED;
    }
}
