package icequill.party;

import java.util.Optional;

/** Who an invoice is addressed to: the customer, a parent account, a landlord or a tenant. */
public record BillTo(String name, Optional<String> attention, Address address, Optional<String> email,
        Optional<String> vatId) {}
