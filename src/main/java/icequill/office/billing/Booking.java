package icequill.office.billing;

import icequill.problem.Validated;
import java.util.Optional;

/**
 * How papers go into the book.
 *
 * @param backdate why one bears an earlier day than the paper before it; empty where none does
 * @param outOfOrder whether a payment may be billed before an earlier one
 * @param isTrial whether all is undone again, to see what would be issued
 */
public record Booking(Optional<String> backdate, boolean outOfOrder, boolean isTrial) {

    /** In order, and for good. */
    public static final Booking USUAL = new Booking(Optional.empty(), false, false);

    <T> Validated<T> of(PendingWrite<T> pending) {
        return isTrial ? pending.tried() : pending.done();
    }
}
