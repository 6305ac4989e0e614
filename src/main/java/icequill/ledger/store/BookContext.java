package icequill.ledger.store;

import java.time.Clock;
import java.util.function.Consumer;

/**
 * What a book works with besides its place.
 *
 * @param clock for when a paper was issued, and anything changed
 * @param author of all changes
 * @param watcher is told each step of issuing
 */
public record BookContext(Clock clock, LockWait patience, Author author, Consumer<Step> watcher) {

    public static BookContext usual(Clock clock, LockWait patience, Author author) {
        return new BookContext(clock, patience, author, step -> {
        });
    }
}
