package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredCustomers;
import icequill.files.form.StoredForms;
import icequill.files.yaml.Fields;
import icequill.files.yaml.Tree;
import icequill.party.Customer;
import icequill.problem.Place;
import java.util.List;
import java.util.Optional;

/** Customers by their forms: those that were handed over, before those of the book. */
record CustomerForms(FormFinder finder) {

    /** For customers who stand in no file; what is wrong with them is collected with all else. */
    StoredCustomers stored() {
        return new StoredCustomers(finder.problems(), finder.note());
    }

    /**
     * Reads a customer, billed through the account that he belongs to where nobody is named for himself.
     *
     * @param asked where he is named
     */
    Optional<Customer> customer(String id, Place asked) {
        Optional<Form> form = finder.given(FormKind.CUSTOMER, id);
        return form.isPresent()
                ? form.flatMap(this::customer)
                : finder.problems().take(finder.book().customer(id))
                        .flatMap(found -> found.isPresent()
                                ? found
                                : finder.unknown(List.of(FormKind.CUSTOMER), id, asked));
    }

    /** A customer from a form of his own, in the same way. */
    Optional<Customer> customer(Form form) {
        Optional<Customer> customer = form.tree() instanceof Tree.Branch branch
                ? stored().customer(branch)
                : notOfAKind(form);
        return customer.flatMap(found -> found.billTo().entries().isEmpty()
                ? form.text(StoredForms.PARENT_KEY).flatMap(parent -> customer(parent, form.tree().place()))
                        .map(parent -> found.billed(parent.addressed()))
                : Optional.of(found));
    }

    /** Nothing, and what its schema has against it. */
    private Optional<Customer> notOfAKind(Form form) {
        return Fields.checked(form.tree(), FormKind.CUSTOMER.schema(), finder.problems())
                .flatMap(none -> Optional.empty());
    }
}
