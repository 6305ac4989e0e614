package icequill.office.agreement;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That an agreement goes on.
 *
 * @param agreed who agreed to it; empty where it goes on by itself
 * @param seen how many steps of the agreement were known to whoever asks; empty where that does not matter
 */
public record RenewalWish(LocalDate day, Optional<String> agreed, Optional<Integer> seen) {}
