package icequill.life.call;

import icequill.life.call.CallEvent.Plan;

/** Where a call is in its life. */
public sealed interface CallState {

    /** Nobody called yet. */
    record Unknown() implements CallState {}

    /** One that somebody made. */
    sealed interface Known extends CallState {

        /** What is on record of it. */
        CallRecord known();
    }

    /** Nobody is to go there yet. */
    record Taken(CallRecord known) implements Known {}

    /** Somebody is to go there, for the first time or again. */
    record Planned(CallRecord known, Plan plan) implements Known {}

    /** Somebody was there. */
    record Done(CallRecord known) implements Known {}

    /** Nothing is left to do. */
    record Closed(CallRecord known) implements Known {}

    /** Nobody goes there. */
    record Withdrawn(CallRecord known, String reason) implements Known {}
}
