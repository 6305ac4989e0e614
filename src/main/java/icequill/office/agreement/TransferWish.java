package icequill.office.agreement;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That a new owner is to take over the rest of an agreement.
 *
 * @param to the new owner, by id
 * @param from his first day
 * @param order his standing purchase order
 * @param who agreed to it
 * @param words of it
 * @param seen how many steps of the agreement were known to whoever asks; empty where that does not matter
 * @param isTrial whether all is undone again, to see what it comes to
 */
public record TransferWish(String to, LocalDate from, Optional<String> order, Optional<String> who,
        Optional<String> words, Optional<Integer> seen, boolean isTrial) {}
