package icequill.ledger.entries;

import icequill.party.Customer;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A customer in the book.
 *
 * @param id lower-case letters, digits and hyphens
 * @param parent the account it belongs to, by id
 * @param forgotten the day on which what is personal was blanked
 */
public record CustomerEntry(String id, Customer customer, Optional<String> parent, Optional<LocalDate> forgotten) {

    public static CustomerEntry of(String id, Customer customer) {
        return new CustomerEntry(id, customer, Optional.empty(), Optional.empty());
    }

    /** Of whom nothing is known but a name. */
    public static CustomerEntry named(String id, String name) {
        return of(id, Customer.named(name));
    }
}
