package icequill.document;

import icequill.party.Address;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Where and when work was done, for whom and by whom.
 *
 * @param visit the shop's reference
 * @param people with their own times
 */
public record VisitSummary(String visit, String site, Optional<String> storeNumber, Address address,
        Optional<Call> call,
        PurchaseOrder order, ZonedDateTime arrived, ZonedDateTime left, List<Person> people) {

    /** One technician's time at the site; the grade is named in the paper's language. */
    public record Person(String name, String grade, ZonedDateTime arrived, ZonedDateTime left) {}

    public VisitSummary {
        people = List.copyOf(people);
    }
}
