package icequill.life.call;

import icequill.life.call.CallEvent.Approval;
import icequill.life.call.CallEvent.Attended;
import icequill.work.PurchaseOrder;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What is on record of a call, whatever its state.
 *
 * @param approvals of more than the order allowed, each of more than the one before
 * @param visits to it, in the order in which they were recorded
 */
public record CallRecord(TakenCall call, List<Approval> approvals, List<Attended> visits) {

    public CallRecord {
        approvals = List.copyOf(approvals);
        visits = List.copyOf(visits);
    }

    /** What is not to be exceeded before tax, as it was allowed last; empty where nobody set a limit. */
    public Optional<MonetaryAmount> limit() {
        return last().map(Approval::limit).or(() -> call.order().limit());
    }

    /** The customer's order, with the limit as it is now, and who allowed it. */
    public PurchaseOrder order() {
        PurchaseOrder first = call.order();
        return new PurchaseOrder(first.purchaseOrder(), limit(), last().map(Approval::by).or(first::approver),
                first.place());
    }

    private Optional<Approval> last() {
        return approvals.isEmpty() ? Optional.empty() : Optional.of(approvals.getLast());
    }

    /** From the call to the first arrival. */
    public Response response() {
        return new Response(call.asked().at(), call.asked().promised(),
                visits.stream().map(Attended::arrived).min(Comparator.comparing(ZonedDateTime::toInstant)));
    }

    CallRecord with(TakenCall corrected) {
        return new CallRecord(corrected, approvals, visits);
    }

    CallRecord with(Approval approval) {
        return new CallRecord(call, Stream.concat(approvals.stream(), Stream.of(approval)).toList(), visits);
    }

    CallRecord with(Attended visit) {
        return has(visit.visit())
                ? new CallRecord(call, approvals,
                        visits.stream().map(known -> known.visit().equals(visit.visit()) ? visit : known).toList())
                : new CallRecord(call, approvals, Stream.concat(visits.stream(), Stream.of(visit)).toList());
    }

    CallRecord without(String visit) {
        return new CallRecord(call, approvals,
                visits.stream().filter(known -> !known.visit().equals(visit)).toList());
    }

    /** Whether a visit to it, by id, is recorded. */
    public boolean has(String visit) {
        return visits.stream().anyMatch(known -> known.visit().equals(visit));
    }
}
