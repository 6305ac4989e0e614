package icequill.ledger.entries;

import icequill.party.Address;
import java.util.Optional;
import org.jdbi.v3.core.mapper.reflect.ColumnName;

/**
 * A site in the book.
 *
 * @param customer by id
 * @param taxPlace as the tax rules name it
 * @param data all that is known of it, as the caller writes it
 */
public record SiteEntry(String id, @ColumnName("customer_id") String customer, String name,
        Optional<String> storeNumber, Address address,
        Optional<String> taxPlace, String data) {}
