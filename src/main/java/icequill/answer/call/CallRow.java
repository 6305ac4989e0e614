package icequill.answer.call;

import icequill.life.call.CallEvent.Attended;
import icequill.life.call.CallRecord;
import icequill.shop.BookedCall;
import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * A call in a list.
 *
 * @param call by id; empty where only a visit tells that somebody asked for it
 * @param visit by id, that answers it first
 * @param site by id
 * @param plan who goes there next
 */
public record CallRow(Optional<String> call, Optional<String> visit, CallStage stage, String site, String siteName,
        ZonedDateTime at, String caller, String symptom, Optional<ToldPlan> plan, ToldResponse response) {

    /**
     * A call of the book.
     *
     * @param siteName what its site is called
     */
    public static CallRow of(BookedCall call, String siteName, ZonedDateTime now) {
        CallRecord known = call.state().known();
        Optional<String> visit = known.visits().stream().map(Attended::visit).findFirst();
        return new CallRow(Optional.of(call.id()), visit, CallStage.of(call.state()), call.site(), siteName,
                known.call().asked().at(), known.call().asked().askedBy(), known.call().asked().symptom(),
                ToldPlan.of(call.state()), ToldResponse.of(known.response(), now));
    }
}
