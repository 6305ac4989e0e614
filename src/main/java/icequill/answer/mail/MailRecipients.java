package icequill.answer.mail;

import icequill.answer.Listing;
import icequill.explain.ConstantKey;
import icequill.party.Contact;
import icequill.party.MailWishes;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Who at a customer's gets papers by mail, and how.
 *
 * @param customer by id
 * @param people for bills, for renewals (quotes, agreements, notices) and more; those without an address get nothing
 * @param printed the address on bills, which gets what nobody of the people is there for
 * @param standing papers of the shop that may go along with bills
 */
public record MailRecipients(String customer, String customerName, List<Person> people, Optional<String> printed,
        Wishes wishes, List<StandingPaper> standing) implements Listing {

    private static final List<String> HEAD = List.of("who", "email", "for");

    /** One of the people, and what they are there for. */
    public record Person(String name, Optional<String> email, List<Contact.Purpose> purposes) {
        public Person {
            purposes = List.copyOf(purposes);
        }

        public static Person of(Contact contact) {
            return new Person(contact.name(), contact.email(), contact.purposes().stream().sorted().toList());
        }
    }

    /**
     * How papers are to be mailed.
     *
     * @param atOnce for what papers are mailed as soon as they are issued
     * @param bare whether the PDF carries no files
     * @param data whether the electronic invoice lies beside it
     * @param enclosed standing papers that go with each bill, by name
     */
    public record Wishes(List<Contact.Purpose> atOnce, boolean bare, boolean data, List<String> enclosed) {
        public Wishes {
            atOnce = List.copyOf(atOnce);
            enclosed = List.copyOf(enclosed);
        }

        public static Wishes of(MailWishes wishes) {
            return new Wishes(wishes.atOnce().stream().sorted().toList(), wishes.bare(), wishes.data(),
                    wishes.enclosed());
        }
    }

    /**
     * A paper of the shop.
     *
     * @param expires its last day; missing where it has none
     */
    public record StandingPaper(String name, String title, Optional<LocalDate> expires, boolean expired) {}

    public MailRecipients {
        people = List.copyOf(people);
        standing = List.copyOf(standing);
    }

    @Override
    public List<String> head() {
        return HEAD;
    }

    @Override
    public List<List<String>> rows() {
        return people.stream().map(person -> List.of(person.name(), person.email().orElse(""), person.purposes()
                .stream().map(ConstantKey::of).collect(Collectors.joining(", ")))).toList();
    }
}
