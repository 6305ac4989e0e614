package icequill.document;

import icequill.party.Address;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where and when what is billed was done, and under which order of the customer's.
 *
 * @param address of the first, where there are several sites
 * @param until the last day, which may be the first
 * @param severalSites true where it was done at several; empty else
 */
public record ServicePeriod(String site, Optional<String> storeNumber, Address address, Optional<String> purchaseOrder,
        LocalDate from, LocalDate until, Optional<Boolean> severalSites) {

    public ServicePeriod(String site, Optional<String> storeNumber, Address address, Optional<String> purchaseOrder,
            LocalDate from, LocalDate until) {
        this(site, storeNumber, address, purchaseOrder, from, until, Optional.empty());
    }

    /** Whether there is one site that it was for. */
    public boolean isAtOneSite() {
        return severalSites.isEmpty();
    }
}
