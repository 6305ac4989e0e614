package icequill.office.care;

import icequill.answer.history.VisitState;
import java.util.Optional;
import java.util.Set;

/**
 * Which visits somebody wants to see; whatever is empty leaves none out.
 *
 * @param site by id
 * @param customer by id; accounts below him count as his
 * @param machine by id, with its site before it ({@code hotel/lobby-bar}) where no site is asked for and several have one of that id
 * @param technician a part of the name
 * @param caller a part of the name of who asked for it
 * @param find words, each of which a visit has somewhere: in its id, its site's id or name, its people, its caller, its purchase order or its machines' ids
 * @param calls whether only those that somebody asked for
 * @param most how many at most, from 1
 */
public record VisitWish(Optional<String> site, Optional<String> customer, Optional<String> machine,
        Optional<String> technician, Optional<String> caller, Optional<String> find, boolean calls, AskedPeriod period,
        Set<VisitState> states,
        int most) {

    public VisitWish {
        states = Set.copyOf(states);
    }
}
