package icequill.files.form;

import icequill.files.yaml.Column;
import icequill.files.yaml.Fields;
import icequill.files.yaml.GivenValue;
import icequill.files.yaml.Json;
import icequill.files.yaml.SchemaCheck;
import icequill.files.yaml.Tree;
import icequill.files.yaml.ValueTree;
import icequill.party.BillTo;
import icequill.party.Customer;
import icequill.party.Timeline;
import icequill.problem.Place;
import icequill.problem.Problems;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * Customers outside the shop folder's files: from single values, and from forms with the keys of {@code customer} in a site's file.
 *
 * @param problems where whatever is wrong is collected
 * @param note is told of each form that is read
 */
public record StoredCustomers(Problems problems, Consumer<Tree> note) {

    private static final String CUSTOMER = "/$defs/customer";
    private static final String BILL_KEY = "billTo";

    /**
     * A customer with values laid over what is known of him.
     *
     * @param before empty for a new one
     * @param from the day from which another is billed; empty to correct who is billed now
     * @param day whose bill-to is changed or followed
     * @param ofAccount whether a parent account may be billed, so that nobody need be named here
     * @return empty when something needed is missing or wrong, which is then reported
     */
    public Optional<Customer> customer(Map<Column, GivenValue> values, Place place, Optional<Customer> before,
            Optional<LocalDate> from, LocalDate day, boolean ofAccount) {
        Tree.Branch base = before.map(customer -> customerTree(billedOn(customer, day)))
                .orElseGet(() -> ValueTree.empty(place));
        Tree.Branch tree = billed(ValueTree.over(base, values));
        return soundCustomer(tree, ofAccount)
                .map(customer -> before.map(old -> dated(customer, old, from, day)).orElse(customer));
    }

    /**
     * A customer from values by their keys.
     *
     * @param ofAccount whether a parent account may be billed, so that nobody need be named here
     */
    public Optional<Customer> customer(Map<String, Object> form, boolean ofAccount) {
        return soundCustomer(StoredForms.tree(Json.text(form), "the book's customer"), ofAccount);
    }

    /** A customer from a form of his own, or from what stands below {@code customer} in a site's; of an account's, nobody need be billed. */
    public Optional<Customer> customer(Tree.Branch tree) {
        return customer(tree, tree.entries().containsKey(StoredForms.PARENT_KEY));
    }

    private Optional<Customer> soundCustomer(Tree.Branch tree, boolean ofAccount) {
        note.accept(tree);
        int found = problems.count();
        return customer(tree, ofAccount).filter(read -> problems.count() == found);
    }

    private Optional<Customer> customer(Tree.Branch tree, boolean ofAccount) {
        problems.addAll(SchemaCheck.check(tree, StoredForms.SITE, CUSTOMER, ofAccount ? Set.of(BILL_KEY) : Set.of()));
        return SiteReader.customer(new Fields(tree, problems));
    }

    private static Customer billedOn(Customer customer, LocalDate day) {
        return customer.billed(customer.billTo().at(day).map(Timeline::always).orElse(customer.billTo()));
    }

    private static Customer dated(Customer changed, Customer old, Optional<LocalDate> from, LocalDate day) {
        Optional<BillTo> billTo = changed.billTo().entries().stream().findFirst()
                .map(Timeline.Entry::value);
        return billTo.map(value -> changed.billed(from
                .map(start -> old.billTo().from(start, value, Place.NOWHERE))
                .orElseGet(() -> old.billTo().corrected(day, value)))).orElse(changed);
    }

    /** Single values give one bill-to; a file has a list of them. */
    private static Tree.Branch billed(Tree.Branch tree) {
        Map<String, Tree> entries = new LinkedHashMap<>(tree.entries());
        if (entries.get(BILL_KEY) instanceof Tree.Branch billTo) {
            Map<String, Tree> named = new LinkedHashMap<>(billTo.entries());
            if (entries.get("name") instanceof Tree.Leaf name) {
                named.putIfAbsent("name", name);
            }
            entries.put(BILL_KEY,
                    new Tree.Row(List.of(new Tree.Branch(named, billTo.keys(), billTo.place())), billTo.place()));
        }
        return new Tree.Branch(entries, tree.keys(), tree.place());
    }

    /** As {@link #customer} reads it, with the one bill-to it has as keys of its own. */
    private static Tree.Branch customerTree(Customer customer) {
        Tree.Branch tree = StoredForms.tree(CustomerForm.of(Optional.empty(), customer).json(), "the book's customer");
        Map<String, Tree> entries = new LinkedHashMap<>(tree.entries());
        if (entries.get(BILL_KEY) instanceof Tree.Row row && !row.items().isEmpty()) {
            entries.put(BILL_KEY, row.items().getFirst());
        }
        return new Tree.Branch(entries, tree.keys(), tree.place());
    }
}
