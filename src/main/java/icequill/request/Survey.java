package icequill.request;

import icequill.work.Visit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** The condition in which machines were found before an agreement. */
public record Survey(LocalDate date, List<Condition> machines) {

    public Survey {
        machines = List.copyOf(machines);
    }

    /**
     * How one machine was found.
     *
     * @param lastCleaned empty when nobody knows
     * @param found by the ids of the plans' catch-up rows; empty for a machine in fair condition
     * @param note in the surveyor's own words
     */
    public record Condition(Visit.Named machine, Optional<LocalDate> lastCleaned, List<Visit.Named> found,
            Optional<String> note) {

        public Condition {
            found = List.copyOf(found);
        }
    }
}
