package icequill.answer.call;

import icequill.life.call.CallEvent.Approval;
import icequill.life.call.CallEvent.Attended;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A call as it is told.
 *
 * @param site by id
 * @param machine it is about, by id, and {@code machineName}
 * @param since when it is so, in the caller's words
 * @param limit not to be exceeded before tax, as it was allowed last
 * @param approver of the order
 * @param agreement by which somebody was promised, by number
 * @param approvals of more than the order allowed
 * @param withdrawn why nobody goes there
 * @param next what can be done now
 * @param isForgotten whether the names and words of people were let go with its customer
 */
public record CallAnswer(String id, CallStage stage, String site, String siteName, String caller, ZonedDateTime at,
        String symptom, Optional<String> machine, Optional<String> machineName, Optional<String> since,
        Optional<String> purchaseOrder, Optional<MonetaryAmount> limit, Optional<String> approver,
        Optional<String> agreement, ToldResponse response, Optional<ToldPlan> plan, List<Approval> approvals,
        List<Attended> visits, Optional<String> withdrawn, List<Step> steps, List<Next> next, boolean isForgotten) {

    /**
     * A step of its life.
     *
     * @param event what happened
     * @param dated on which day
     * @param at when it was noted, and {@code who} did
     * @param corrected what the call says otherwise since
     */
    public record Step(String event, LocalDate dated, Instant at, String who, List<Said> corrected) {
        public Step {
            corrected = List.copyOf(corrected);
        }
    }

    /** What a call says. */
    public enum Said {
        CALLER, SYMPTOM, MACHINE, SINCE, PURCHASE_ORDER, LIMIT, APPROVER
    }

    /** What can be done with a call. */
    public enum Next {
        PLAN, VISIT, CHANGE, APPROVE, CLOSE, WITHDRAW
    }

    public CallAnswer {
        approvals = List.copyOf(approvals);
        visits = List.copyOf(visits);
        steps = List.copyOf(steps);
        next = List.copyOf(next);
    }

    /** Whether something can be done now; pages ask. */
    public boolean can(String step) {
        return next.stream().anyMatch(each -> each.name().equalsIgnoreCase(step));
    }
}
