package icequill.office.agreement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is to change in mid-term: machines at one of its sites, or a whole site that comes in or goes out.
 *
 * @param day on which that was agreed on
 * @param from the first day with what is looked after then
 * @param site at which machines come in or go out, by id; empty where the agreement is for one alone
 * @param siteIn that comes in, by id
 * @param siteOut that goes out, by id
 * @param added machines by id; of a site that comes in those that are looked after, or none for all
 * @param removed machines by id
 * @param who agreed to it
 * @param words of why
 * @param seen how many steps of the agreement were known to whoever asks; empty where that does not matter
 * @param isTrial whether all is undone again, to see what it comes to
 */
public record ChangeWish(LocalDate day, LocalDate from, Optional<String> site, Optional<String> siteIn,
        Optional<String> siteOut, List<String> added, List<String> removed, Optional<String> who,
        Optional<String> words, Optional<Integer> seen, boolean isTrial) {
    public ChangeWish {
        added = List.copyOf(added);
        removed = List.copyOf(removed);
    }
}
