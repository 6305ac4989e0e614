package icequill.ledger.find;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a paper can be found by, besides its number.
 *
 * @param store the customer's number for the site, and its name
 * @param address one text
 */
public record SearchKeys(String customer, String store, String address, Optional<String> purchaseOrder,
        List<String> serials,
        List<MonetaryAmount> amounts, List<LocalDate> days) {

    public SearchKeys {
        serials = List.copyOf(serials);
        amounts = List.copyOf(amounts);
        days = List.copyOf(days);
    }

    /** Where the paper went, as the book keeps it. */
    public String where() {
        return String.join("\n", customer, store, address);
    }
}
