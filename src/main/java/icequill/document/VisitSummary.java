package icequill.document;

import icequill.party.Address;
import icequill.work.Call;
import icequill.work.PurchaseOrder;
import icequill.work.Sale;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Where and when work was done, for whom and by whom.
 *
 * @param visit the shop's reference
 * @param people with their own times
 * @param sold how things came to the customer that were sold without a visit; empty for a visit
 */
public record VisitSummary(String visit, String site, Optional<String> storeNumber, Address address,
        Optional<Call> call,
        PurchaseOrder order, ZonedDateTime arrived, ZonedDateTime left, List<Person> people, Optional<Sale.Way> sold) {

    /** One technician's time at the site; the grade is named in the paper's language. */
    public record Person(String name, String grade, ZonedDateTime arrived, ZonedDateTime left) {}

    public VisitSummary {
        people = List.copyOf(people);
    }

    /** The same at another address. */
    public VisitSummary at(Address other) {
        return new VisitSummary(visit, site, storeNumber, other, call, order, arrived, left, people, sold);
    }

    /** Whether it was fetched at the shop. */
    public boolean isFetched() {
        return sold.filter(way -> way == Sale.Way.FETCHED).isPresent();
    }
}
