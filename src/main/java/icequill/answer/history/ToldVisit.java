package icequill.answer.history;

import icequill.work.Call;
import icequill.work.Sale;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A visit as it is told, in the language of the reader.
 *
 * @param site by id
 * @param sold how things came to the customer that were sold without a visit; empty for a visit
 * @param call why it took place, if the customer asked for it
 * @param parts that were put in at no machine in particular
 * @param approver of the customer
 * @param nextDue the day by which the next cleaning is due
 * @param withdrawn why it is not to be billed
 * @param isForgotten whether what it said was let go with its customer
 * @param papers that were issued for it, by number
 */
public record ToldVisit(String id, String site, VisitState state, ZonedDateTime began, ZonedDateTime ended,
        Optional<Sale.Way> sold, Optional<Call> call, List<Person> people, List<ToldMachine> machines,
        List<String> parts,
        Optional<String> purchaseOrder, Optional<String> approver, Optional<ZonedDateTime> safeFrom,
        Optional<LocalDate> nextDue, Optional<String> withdrawn, boolean isForgotten, List<String> papers) {

    /** One technician's time. */
    public record Person(String name, String grade, ZonedDateTime arrived, ZonedDateTime left) {}

    public ToldVisit {
        people = List.copyOf(people);
        machines = List.copyOf(machines);
        parts = List.copyOf(parts);
        papers = List.copyOf(papers);
    }
}
