package icequill.agreement;

import icequill.explain.Phrase;
import icequill.party.Machine;
import icequill.work.Task;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A visit of an agreement's calendar.
 *
 * @param begun months of the term that have begun before it was due
 * @param filtersDue whether water filters are changed on it
 * @param moved why it is not on the day it was due
 */
public record PlannedVisit(int begun, LocalDate date, Slot slot, boolean filtersDue, Optional<Phrase> moved) {

    /** What is done to a machine, in order; the change of a filter only where it is due. */
    public List<Task> tasksOn(Machine machine, List<Task> known, Optional<FilterRule> filters) {
        Optional<String> change = filters.flatMap(FilterRule::task).filter(task -> !filtersDue);
        return slot.scope().tasksOn(machine, known).stream()
                .filter(task -> change.filter(task.id()::equals).isEmpty()).toList();
    }
}
