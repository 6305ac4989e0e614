package icequill.party;

import java.util.Optional;

/** Who an invoice is addressed to: the customer, a parent account, a landlord or a tenant. */
public record BillTo(String name, Optional<String> attention, Address address, Optional<String> email,
        Optional<String> vatId) {

    /** The same; where it names nobody to look at the bill, the contact does. */
    public BillTo attended(Optional<Contact> contact) {
        return attention.isPresent() || contact.isEmpty()
                ? this
                : new BillTo(name, contact.map(Contact::name), address, email.or(() -> contact.flatMap(Contact::email)),
                        vatId);
    }
}
