package icequill.ledger.store;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;

/** Somebody else is writing in a book, and did not end in time. */
final class BookInUse extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final String holder;

    /** @param holder a process and its machine */
    BookInUse(String holder, Throwable cause) {
        super(holder, cause);
        this.holder = holder;
    }

    Problem problem(Place book) {
        return problem(book, holder);
    }

    static Problem problem(Place book, String holder) {
        return new Problem(Code.BOOK_IN_USE, book, holder + " is writing in the book, and goes on",
                "try again when it is done, or end that process");
    }
}
