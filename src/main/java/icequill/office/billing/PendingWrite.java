package icequill.office.billing;

import icequill.ledger.Transaction;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.shop.ShopBook;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;

/**
 * What is worked out and waits for the book. Whatever it was worked out from is looked at again in the book's own transaction.
 *
 * @param work compares first what was read
 */
public record PendingWrite<T>(ShopBook book, Function<Transaction, Validated<T>> work) {

    public Validated<T> done() {
        return book.write(work);
    }

    /** What {@link #done} would give if it were called now. All of it is undone again: nothing is stored, no number taken. */
    public Validated<T> tried() {
        AtomicReference<Validated<T>> result = new AtomicReference<>();
        Problem undone = new Problem(Code.NOT_ALLOWED, Place.NOWHERE, "only tried", "");
        Validated<T> stopped = book.write(open -> {
            result.set(work.apply(open));
            return Validated.invalid(undone);
        });
        Validated<T> tried = result.get();
        return tried == null ? stopped : tried;
    }
}
