package icequill.request;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The purchase orders that stand for all that an agreement bills.
 *
 * @param first from its beginning; empty where there was none
 * @param later by rising day
 */
public record StandingOrders(Optional<String> first, List<From> later) {

    /**
     * What stands from a day on.
     *
     * @param number empty where none stands any more
     */
    public record From(LocalDate day, Optional<String> number) {}

    public StandingOrders {
        later = later.stream().sorted(Comparator.comparing(From::day)).toList();
    }

    /** With a further one; of two from one day the one that was noted last holds. */
    public StandingOrders and(From next) {
        List<From> all = new ArrayList<>(later);
        all.add(next);
        return new StandingOrders(first, all);
    }

    /** The one that stands on a day. */
    public Optional<String> on(LocalDate day) {
        return later.stream().filter(order -> !order.day().isAfter(day)).reduce((before, after) -> after)
                .map(From::number).orElse(first);
    }
}
