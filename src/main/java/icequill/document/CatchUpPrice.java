package icequill.document;

import icequill.explain.Explanation;
import icequill.party.Wording;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What it costs, once, to bring neglected machines into the condition that a plan's price is for.
 *
 * @param usual price of the first visit without it
 * @param lines of the first visit with it
 * @param whole price of that
 * @param extra what it adds
 * @param tax that comes with it, estimated
 */
public record CatchUpPrice(LocalDate surveyed, List<Found> machines, MonetaryAmount usual, List<InvoiceLine> lines,
        MonetaryAmount whole, MonetaryAmount extra, Explanation how, MonetaryAmount tax) {

    /**
     * How one machine was found.
     *
     * @param where it stands
     * @param lastCleaned empty when nobody knows
     * @param found empty for a machine in fair condition
     * @param tasks that are done once more
     */
    public record Found(String where, Optional<LocalDate> lastCleaned, List<Wording> found, List<Wording> tasks,
            Optional<String> note) {
        public Found {
            found = List.copyOf(found);
            tasks = List.copyOf(tasks);
        }
    }

    public CatchUpPrice {
        machines = List.copyOf(machines);
        lines = List.copyOf(lines);
    }
}
