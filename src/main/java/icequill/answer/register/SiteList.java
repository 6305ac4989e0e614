package icequill.answer.register;

import icequill.answer.Listing;
import java.util.List;
import java.util.Optional;

/** Sites of the book. */
public record SiteList(List<Row> sites) implements Listing {

    public SiteList {
        sites = List.copyOf(sites);
    }

    /**
     * One of them.
     *
     * @param store the number that the customer gave it
     * @param customer by id
     * @param address in one line
     */
    public record Row(String id, String name, Optional<String> store, String customer, String customerName,
            String address, String city) {
        private List<String> cells() {
            return List.of(id, name, store.orElse(""), customer, city);
        }

        private List<String> texts() {
            return List.of(id, name, store.orElse(""), customer, customerName, address);
        }
    }

    /** Only those that somebody may mean by these words. */
    public SiteList with(String text) {
        return new SiteList(sites.stream().filter(one -> Listing.holds(one.texts(), text)).toList());
    }

    @Override
    public List<String> head() {
        return List.of("id", "name", "store", "customer", "city");
    }

    @Override
    public List<List<String>> rows() {
        return sites.stream().map(Row::cells).toList();
    }
}
