package icequill.life.call;

import icequill.life.call.CallEvent.Approval;
import icequill.life.call.CallEvent.Attended;
import icequill.life.call.CallEvent.Plan;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** The steps of calls: which there are, and why others are refused. */
public final class CallLife {

    private CallLife() {
    }

    /** The state after an event, or why there is no such step. */
    public static Validated<CallState> step(CallState state, CallEvent event) {
        return switch (state) {
        case CallState.Unknown unknown -> event instanceof CallEvent.Taken(TakenCall call)
                ? Validated.valid(new CallState.Taken(new CallRecord(call, List.of(), List.of())))
                : refused("nobody called yet", "first take the call");
        case CallState.Withdrawn(CallRecord known, String reason) when !(event instanceof CallEvent.Taken) ->
            refused("call \"" + known.call().id() + "\" was withdrawn: " + reason, "a new call");
        case CallState.Known known -> step(known, event);
        };
    }

    private static Validated<CallState> step(CallState.Known state, CallEvent event) {
        return switch (event) {
        case CallEvent.Taken(TakenCall call) -> refused(named(state) + " was taken already", "another id");
        case CallEvent.Corrected(TakenCall call) -> corrected(state, call);
        case CallEvent.Planned(Plan plan) -> planned(state, plan);
        case CallEvent.Approved(Approval approval) -> approved(state, approval);
        case CallEvent.Done(Attended visit) -> done(state, visit);
        case CallEvent.Undone(String visit) -> undone(state, visit);
        case CallEvent.Closed() -> closed(state);
        case CallEvent.Withdrawn(String reason) -> withdrawn(state, reason);
        };
    }

    /** Once more than its limit was allowed, that stands. */
    private static Validated<CallState> corrected(CallState.Known state, TakenCall call) {
        CallRecord known = state.known();
        if (state instanceof CallState.Closed) {
            return refused(named(state) + " is closed", "a new call");
        }
        return known.approvals().isEmpty() || known.call().order().limit().equals(call.order().limit())
                ? Validated.valid(with(state, known.with(call)))
                : refused(named(state) + " may cost more than its limit already", "who allows more than that");
    }

    private static Validated<CallState> planned(CallState.Known state, Plan plan) {
        if (state instanceof CallState.Closed) {
            return refused(named(state) + " is closed", "a new call");
        }
        if (plan.person().isBlank()) {
            return missing("it is not said who goes there", "a name");
        }
        return plan.at().isBefore(state.known().call().asked().at())
                ? Validated.invalid(new Problem(Code.WRONG_ORDER, Place.NOWHERE,
                        "planned for " + plan.at().toLocalDateTime() + ", before the call at "
                                + state.known().call().asked().at().toLocalDateTime(),
                        "a time after the call"))
                : Validated.valid(new CallState.Planned(state.known(), plan));
    }

    private static Validated<CallState> approved(CallState.Known state, Approval approval) {
        Optional<MonetaryAmount> limit = state.known().limit();
        if (limit.isEmpty()) {
            return refused(named(state) + " has no limit", "nobody has to allow more");
        }
        if (approval.by().isBlank()) {
            return missing("it is not said who allows it", "a name");
        }
        return approval.limit().isGreaterThan(limit.get())
                ? Validated.valid(with(state, state.known().with(approval)))
                : Validated.invalid(new Problem(Code.OUT_OF_RANGE, Place.NOWHERE,
                        named(state) + " may cost " + Amounts.plain(limit.get()) + " before tax already",
                        "more than that"));
    }

    /** A visit to a closed call may be recorded anew, as long as it is not billed. */
    private static Validated<CallState> done(CallState.Known state, Attended visit) {
        CallRecord known = state.known().with(visit);
        return state instanceof CallState.Closed
                ? state.known().has(visit.visit())
                        ? Validated.valid(new CallState.Closed(known))
                        : refused(named(state) + " is closed", "a new call")
                : Validated.valid(new CallState.Done(known));
    }

    /** What was planned before a visit is not planned any more. */
    private static Validated<CallState> undone(CallState.Known state, String visit) {
        if (!state.known().has(visit)) {
            return refused("visit \"" + visit + "\" is not one to " + named(state), "a visit to it");
        }
        CallRecord known = state.known().without(visit);
        return Validated.valid(state instanceof CallState.Planned
                ? with(state, known)
                : known.visits().isEmpty() ? new CallState.Taken(known) : new CallState.Done(known));
    }

    private static Validated<CallState> closed(CallState.Known state) {
        return state instanceof CallState.Closed
                ? refused(named(state) + " is closed already", "")
                : state.known().visits().isEmpty()
                        ? refused("nobody went to " + named(state) + " yet",
                                "record its visit, or withdraw it with a reason")
                        : Validated.valid(new CallState.Closed(state.known()));
    }

    private static Validated<CallState> withdrawn(CallState.Known state, String reason) {
        if (!state.known().visits().isEmpty()) {
            return refused(named(state) + " was done by visit \"" + state.known().visits().getFirst().visit() + "\"",
                    "close it");
        }
        return reason.isBlank()
                ? missing("no reason is given", "a reason, which the book keeps")
                : Validated.valid(new CallState.Withdrawn(state.known(), reason));
    }

    /** The same state with another record. */
    private static CallState with(CallState.Known state, CallRecord known) {
        return switch (state) {
        case CallState.Taken taken -> new CallState.Taken(known);
        case CallState.Planned planned -> new CallState.Planned(known, planned.plan());
        case CallState.Done done -> new CallState.Done(known);
        case CallState.Closed closed -> new CallState.Closed(known);
        case CallState.Withdrawn withdrawn -> new CallState.Withdrawn(known, withdrawn.reason());
        };
    }

    private static String named(CallState.Known state) {
        return "call \"" + state.known().call().id() + "\"";
    }

    private static Validated<CallState> refused(String message, String allowed) {
        return Validated.invalid(new Problem(Code.NOT_ALLOWED, Place.NOWHERE, message, allowed));
    }

    private static Validated<CallState> missing(String message, String allowed) {
        return Validated.invalid(new Problem(Code.MISSING, Place.NOWHERE, message, allowed));
    }
}
