package icequill.office.call;

import icequill.answer.call.CallStage;
import icequill.office.care.AskedPeriod;
import java.util.Optional;
import java.util.Set;

/**
 * Which calls somebody wants to see; whatever is empty leaves none out.
 *
 * @param site by id
 * @param customer by id; accounts below him count as his
 * @param machine by id, with its site before it where no site is asked for
 * @param caller a part of the name of who called
 * @param find words, each of which a call has somewhere: in its id, its site's id or name, who called, what was wrong or the purchase order
 * @param period the days of the calls
 * @param most how many at most, from 1
 */
public record CallWish(Optional<String> site, Optional<String> customer, Optional<String> machine,
        Optional<String> caller, Optional<String> find, AskedPeriod period, Set<CallStage> stages, int most) {

    public CallWish {
        stages = Set.copyOf(stages);
    }
}
