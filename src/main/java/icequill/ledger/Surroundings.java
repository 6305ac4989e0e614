package icequill.ledger;

import java.time.Clock;
import java.util.function.Consumer;

/**
 * What a book works with besides its place.
 *
 * @param clock for when a paper was issued
 * @param watcher is told each step of issuing
 */
record Surroundings(Clock clock, Patience patience, Consumer<Step> watcher) {

    static Surroundings usual(Clock clock, Patience patience) {
        return new Surroundings(clock, patience, step -> {
        });
    }
}
