package icequill.party;

import java.util.List;
import java.util.Set;

/**
 * How a customer wants papers by mail. Who gets them stands with the contacts.
 *
 * @param atOnce what papers are sent for as soon as they are issued
 * @param bare the PDF carries no files, because the customer's gateway holds back what does
 * @param data the electronic invoice lies beside the PDF
 * @param enclosed names of standing papers of the shop that go with each bill
 */
public record MailWishes(Set<Contact.Purpose> atOnce, boolean bare, boolean data, List<String> enclosed) {

    /** Papers go when somebody sends them, with their data within and nothing beside. */
    public static final MailWishes USUAL = new MailWishes(Set.of(), false, false, List.of());

    public MailWishes {
        atOnce = Set.copyOf(atOnce);
        enclosed = List.copyOf(enclosed);
    }
}
