package icequill.office;

import icequill.ledger.Transaction;
import icequill.problem.Checked;
import java.util.function.Function;

/**
 * What is worked out and waits for the book. Whatever it was worked out from is looked at again in the book's own transaction.
 *
 * @param work compares first what was read
 */
record Pending<T>(ShopBook book, Function<Transaction, Checked<T>> work) {

    Checked<T> done() {
        return book.write(work);
    }
}
