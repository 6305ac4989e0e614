package icequill.office.billing;

import icequill.files.form.VisitNames;
import icequill.ledger.Transaction;
import icequill.ledger.entries.VisitEntry;
import icequill.life.call.CallEvent;
import icequill.life.call.CallEvent.Attended;
import icequill.life.call.CallEvent.Plan;
import icequill.life.call.CallState;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.BookedCall;
import icequill.shop.BookedCalls;
import icequill.visits.VisitContext;
import icequill.work.Attendance;
import icequill.work.Call;
import icequill.work.Visit;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Collectors;

/** Takes the calls that visits answer a step further, in the transaction that stores the visits. */
record AnsweredCalls(BookedCalls calls, Transaction open) {

    static AnsweredCalls in(Transaction open, Shop shop) {
        return new AnsweredCalls(new BookedCalls(shop, open), open);
    }

    /**
     * A visit that is to be stored.
     *
     * @param before what the book says of it so far
     * @return the visit, or why there is no such step
     */
    Validated<Visit> stored(VisitContext hand, boolean isPlanned, Optional<VisitEntry> before) {
        Visit visit = hand.visit();
        Optional<String> call = visit.call().flatMap(Call::id);
        Optional<String> other = before.filter(entry -> !entry.isForgotten())
                .flatMap(entry -> VisitNames.of(entry.data()).call()).filter(id -> call.filter(id::equals).isEmpty());
        return undone(other, visit.id(), visit.day())
                .then(done -> call.map(id -> answered(id, hand, isPlanned)).orElse(Validated.valid(visit)));
    }

    /** A visit that is taken back. */
    Validated<VisitEntry> withdrawn(VisitEntry visit) {
        Optional<String> call = visit.isForgotten() ? Optional.empty() : VisitNames.of(visit.data()).call();
        return undone(call, visit.id(), visit.began().toLocalDate()).map(done -> visit);
    }

    private Validated<String> undone(Optional<String> call, String visit, LocalDate day) {
        Optional<BookedCall> known = call.filter(calls::has).flatMap(id -> calls.find(id).found())
                .filter(found -> found.state().known().has(visit));
        return known.map(found -> calls
                .add(open, found.id(), found.site(), new CallEvent.Undone(visit), day).map(done -> visit))
                .orElse(Validated.valid(visit));
    }

    private Validated<Visit> answered(String id, VisitContext hand, boolean isPlanned) {
        Visit visit = hand.visit();
        return calls.find(id).then(call -> {
            if (!call.site().equals(hand.site().id())) {
                return Validated.invalid(new Problem(Code.NOT_ALLOWED, visit.place(),
                        "call \"" + id + "\" is of site \"" + call.site() + "\"", "a call of the visit's own site"));
            }
            return (isPlanned ? planned(call.state(), visit) : done(call.state(), visit))
                    .map(event -> calls.add(open, id, call.site(), event, visit.day()).map(done -> visit))
                    .orElse(Validated.valid(visit));
        });
    }

    /** Nothing where it is planned so already. */
    private static Optional<CallEvent> planned(CallState.Known state, Visit visit) {
        Plan plan = new Plan(visit.people().stream().map(Attendance::person).collect(Collectors.joining(", ")),
                visit.began());
        return state instanceof CallState.Planned known && known.plan().equals(plan)
                ? Optional.empty()
                : Optional.of(new CallEvent.Planned(plan));
    }

    /** Nothing where it is recorded anew with the same arrival. */
    private static Optional<CallEvent> done(CallState.Known state, Visit visit) {
        Attended arrival = new Attended(visit.id(), visit.began());
        return state.known().visits().contains(arrival)
                ? Optional.empty()
                : Optional.of(new CallEvent.Done(arrival));
    }
}
