package icequill.life.claim;

import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** What happens to a claim. */
public sealed interface ClaimEvent {

    LocalDate day();

    /** It is sent to its payer; under the payer's reference, where he gave one. */
    record Dispatch(LocalDate day, Optional<String> reference) implements ClaimEvent {}

    /** The failed part goes back. */
    record PartReturn(LocalDate day) implements ClaimEvent {}

    /** Money comes in for it, which may be less than was claimed. */
    record Settlement(LocalDate day, MonetaryAmount amount) implements ClaimEvent {}

    /** The payer will not pay. */
    record Denial(LocalDate day, String reason) implements ClaimEvent {}
}
