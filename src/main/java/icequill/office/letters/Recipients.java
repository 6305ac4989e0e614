package icequill.office.letters;

import icequill.mail.MailAddress;
import icequill.party.Contact;
import icequill.party.Contacts;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Who gets a paper by mail. */
public final class Recipients {

    private Recipients() {
    }

    /**
     * All people of the customer who are to be turned to for something; where none has an address, the one on the paper.
     *
     * @param customer by id
     * @param printed the address on the paper
     */
    public static Validated<List<MailAddress>> of(String customer, Contacts contacts, Contact.Purpose purpose,
            Optional<String> printed) {
        List<Contact> people = contacts.people().stream()
                .filter(contact -> contact.purposes().contains(purpose) && contact.email().isPresent()).toList();
        if (people.isEmpty()) {
            return printed.map(address -> MailAddress.read(address, place(customer, "billTo.email")).map(List::of))
                    .orElseGet(() -> nobody(customer, purpose));
        }
        Problems problems = new Problems();
        List<MailAddress> found = people.stream().flatMap(contact -> problems.take(
                MailAddress.read(contact.email().orElseThrow(), place(customer, "contacts"))
                        .then(address -> address.named(contact.name(), place(customer, "contacts"))))
                .stream()).toList();
        return problems.or(() -> found);
    }

    private static Place place(String customer, String path) {
        return new Place("customer " + customer, 0, path);
    }

    private static Validated<List<MailAddress>> nobody(String customer, Contact.Purpose purpose) {
        return Validated.invalid(new Problem(Code.MISSING, place(customer, "contacts"),
                "nobody with a mail address is there for " + purpose.name().toLowerCase(Locale.ROOT),
                "somebody: icequill contact add NAME --customer " + customer + " --for "
                        + purpose.name().toLowerCase(Locale.ROOT) + " --email ADDRESS"));
    }
}
