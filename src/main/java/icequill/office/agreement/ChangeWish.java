package icequill.office.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Machines that are to come into an agreement, or to go out of it, in mid-term.
 *
 * @param day on which that was agreed on
 * @param from the first day with the machines as they are then
 * @param site by id; empty where the agreement is for one alone
 * @param added by id
 * @param removed by id
 * @param who agreed to it
 * @param words of why
 * @param seen how many steps of the agreement were known to whoever asks; empty where that does not matter
 * @param isTrial whether all is undone again, to see what it comes to
 */
public record ChangeWish(LocalDate day, LocalDate from, Optional<String> site, List<String> added,
        List<String> removed, Optional<String> who, Optional<String> words, Optional<Integer> seen, boolean isTrial) {
    public ChangeWish {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }
}
