package icequill.life.call;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import javax.money.MonetaryAmount;

/** What happens to a call. */
public sealed interface CallEvent {

    /** Somebody called. */
    record Taken(TakenCall call) implements CallEvent {}

    /**
     * It says something else than was understood.
     *
     * @param call all that it says
     */
    record Corrected(TakenCall call) implements CallEvent {}

    /** Somebody is to go there. */
    record Planned(Plan plan) implements CallEvent {}

    /** The customer allows more than he did. */
    record Approved(Approval approval) implements CallEvent {}

    /** A visit to it is recorded, or was recorded anew. */
    record Done(Attended visit) implements CallEvent {}

    /**
     * A visit to it does not count any more.
     *
     * @param visit by id
     */
    record Undone(String visit) implements CallEvent {}

    /** Nothing is left to do. */
    record Closed() implements CallEvent {}

    /** Nobody goes there. */
    record Withdrawn(String reason) implements CallEvent {}

    /**
     * Who goes there, and when.
     *
     * @param person by name
     */
    record Plan(String person, ZonedDateTime at) {}

    /**
     * What somebody of the customer's allowed.
     *
     * @param limit not to be exceeded before tax
     * @param on the day on which he said so
     */
    record Approval(String by, MonetaryAmount limit, LocalDate on) {}

    /**
     * A visit to a call.
     *
     * @param visit by id
     * @param arrived when the first person did
     */
    record Attended(String visit, ZonedDateTime arrived) {}
}
