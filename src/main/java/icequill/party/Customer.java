package icequill.party;

import java.util.List;
import java.util.Optional;

/**
 * Who pays.
 *
 * @param vendorNumber the shop's number in the customer's books
 * @param paymentDays own terms; empty for the shop's
 * @param notes for the shop's own eyes
 * @param mail how papers are mailed to it
 * @param claimsExemption says that no sales tax is due, which needs a certificate
 */
public record Customer(String name, Optional<Language> language, Timeline<BillTo> billTo, Optional<String> vendorNumber,
        Optional<Integer> paymentDays, boolean claimsExemption, List<Certificate> certificates,
        Optional<Acceptance> accepted, Contacts contacts, Optional<String> notes, MailWishes mail) {

    public Customer {
        certificates = List.copyOf(certificates);
    }

    /** Of whom nothing is known but a name, which may be empty. */
    public static Customer named(String name) {
        return new Customer(name, Optional.empty(), new Timeline<>(List.of()), Optional.empty(), Optional.empty(),
                false,
                List.of(), Optional.empty(), Contacts.NONE, Optional.empty(), MailWishes.USUAL);
    }

    /** Who is billed, with the contact for bills where nobody else is named to look at them. */
    public Timeline<BillTo> addressed() {
        return billTo.map(payer -> payer.attended(contacts.of(Contact.Purpose.BILLS)));
    }

    /** The same, billed otherwise. */
    public Customer billed(Timeline<BillTo> others) {
        return new Customer(name, language, others, vendorNumber, paymentDays, claimsExemption, certificates, accepted,
                contacts, notes, mail);
    }
}
