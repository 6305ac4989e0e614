package icequill.answer.history;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A visit in a list.
 *
 * @param site and {@code machines}: by id
 * @param caller who asked for it
 * @param invoices that bill it, by number
 */
public record VisitRow(String id, String site, VisitState state, ZonedDateTime began, ZonedDateTime ended,
        Optional<String> caller, List<String> people, List<String> machines, List<String> invoices) {

    public VisitRow {
        people = List.copyOf(people);
        machines = List.copyOf(machines);
        invoices = List.copyOf(invoices);
    }
}
