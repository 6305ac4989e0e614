package icequill.party;

import java.util.List;
import java.util.Optional;

/**
 * How a customer or a site is reached.
 *
 * @param telephone its own, whoever answers
 * @param people in the order in which they are to be asked
 */
public record Contacts(Optional<String> telephone, List<Contact> people) {

    public static final Contacts NONE = new Contacts(Optional.empty(), List.of());

    public Contacts {
        people = List.copyOf(people);
    }

    /** The first to be turned to for something. */
    public Optional<Contact> of(Contact.Purpose purpose) {
        return people.stream().filter(contact -> contact.purposes().contains(purpose)).findFirst();
    }
}
