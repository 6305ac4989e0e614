package icequill.document;

import icequill.party.Address;
import java.time.LocalDate;
import java.util.Optional;

/**
 * Where and when what is billed was done, and under which order of the customer's.
 *
 * @param until the last day, which may be the first
 */
public record ServicePeriod(String site, Optional<String> storeNumber, Address address, Optional<String> purchaseOrder,
        LocalDate from, LocalDate until) {}
