package icequill.answer.register;

import icequill.answer.Listing;
import java.util.List;
import java.util.Optional;

/** Agreements of the book. */
public record AgreementList(List<Row> agreements) implements Listing {

    public AgreementList {
        agreements = List.copyOf(agreements);
    }

    /**
     * One of them.
     *
     * @param site by id
     * @param customer by id; empty where the site is not there
     */
    public record Row(String id, String number, String site, Optional<String> customer) {
        private List<String> cells() {
            return List.of(id, number, site, customer.orElse(""));
        }
    }

    /** Only those that hold the text somewhere, in capitals or not. */
    public AgreementList with(String text) {
        return new AgreementList(agreements.stream().filter(one -> Listing.holds(one.cells(), text)).toList());
    }

    @Override
    public List<String> head() {
        return List.of("id", "number", "site", "customer");
    }

    @Override
    public List<List<String>> rows() {
        return agreements.stream().map(Row::cells).toList();
    }
}
