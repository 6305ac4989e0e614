package icequill.answer.register;

import icequill.answer.Listing;
import java.util.List;
import java.util.Optional;

/** Whom to turn to at the customers and sites of the book. */
public record ContactList(List<Row> contacts) implements Listing {

    public ContactList {
        contacts = List.copyOf(contacts);
    }

    /**
     * One of them.
     *
     * @param of customer or site
     * @param id of the customer or the site
     * @param purposes what to turn there for
     */
    public record Row(String of, String id, String name, Optional<String> role, List<String> purposes,
            Optional<String> telephone, Optional<String> email) {

        public Row {
            purposes = List.copyOf(purposes);
        }

        private List<String> cells() {
            return List.of(of, id, name, role.orElse(""), String.join(", ", purposes), telephone.orElse(""),
                    email.orElse(""));
        }
    }

    /** Only those that hold the text somewhere, in capitals or not. */
    public ContactList with(String text) {
        return new ContactList(contacts.stream().filter(one -> Listing.holds(one.cells(), text)).toList());
    }

    @Override
    public List<String> head() {
        return List.of("of", "id", "name", "role", "for", "telephone", "email");
    }

    @Override
    public List<List<String>> rows() {
        return contacts.stream().map(Row::cells).toList();
    }
}
