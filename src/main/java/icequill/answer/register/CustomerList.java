package icequill.answer.register;

import icequill.answer.Listing;
import java.util.List;
import java.util.Optional;

/** Customers of the book. */
public record CustomerList(List<Row> customers) implements Listing {

    public CustomerList {
        customers = List.copyOf(customers);
    }

    /**
     * One of them.
     *
     * @param account the customer above, by id
     * @param sites by id
     */
    public record Row(String id, String name, Optional<String> account, List<String> sites) {
        private List<String> cells() {
            return List.of(id, name, account.orElse(""), String.join(" ", sites));
        }
    }

    /** Only those that hold the text somewhere, in capitals or not. */
    public CustomerList with(String text) {
        return new CustomerList(customers.stream().filter(one -> Listing.holds(one.cells(), text)).toList());
    }

    @Override
    public List<String> head() {
        return List.of("id", "name", "account", "sites");
    }

    @Override
    public List<List<String>> rows() {
        return customers.stream().map(Row::cells).toList();
    }
}
