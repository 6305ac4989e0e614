package icequill.office.mail;

import icequill.party.Contact;
import icequill.party.MailWishes;
import java.util.List;
import java.util.Set;

/**
 * Who is to get papers by mail, and how.
 *
 * @param people those of the customer, and new ones; others stay as they are
 */
public record RecipientsWish(List<Person> people, MailWishes wishes) {

    /**
     * One of the people.
     *
     * @param email empty for none
     */
    public record Person(String name, String email, Set<Contact.Purpose> purposes) {
        public Person {
            purposes = Set.copyOf(purposes);
        }
    }

    public RecipientsWish {
        people = List.copyOf(people);
    }
}
