package icequill.life.call;

import icequill.work.Call;
import icequill.work.PurchaseOrder;
import java.util.Optional;

/**
 * A call as it was taken, or corrected since.
 *
 * @param site by id
 * @param asked who called, when, why, and by when somebody was promised; it has an id
 * @param machine it is about, by id; empty where that is not known
 * @param since when it is so, in the caller's words
 * @param order with the limit that was given on the telephone
 * @param agreement by whose terms the response is promised, by number
 */
public record TakenCall(String site, Call asked, Optional<String> machine, Optional<String> since,
        PurchaseOrder order, Optional<String> agreement) {

    /** By which the book knows it. */
    public String id() {
        return asked.id().orElseThrow();
    }
}
