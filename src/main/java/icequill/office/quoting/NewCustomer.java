package icequill.office.quoting;

import icequill.files.form.Form;
import icequill.files.yaml.Tree;
import icequill.ledger.Reading;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.shop.EntryId;
import java.util.ArrayList;
import java.util.List;

/** Makes sure that who is taken for a new customer does not take the place of one whom the book has. */
final class NewCustomer {

    private static final String CUSTOMER = "customer";
    private static final String NAME = "name";

    private NewCustomer() {
    }

    /** That the book has a site, or a customer, of the same name. */
    static List<Problem> taken(Form site, Reading open) {
        List<Problem> taken = new ArrayList<>();
        if (open.entries().site(site.id()).found().isPresent()) {
            taken.add(known("site", site.id(), new Place(site.id(), 0, NAME)));
        }
        String payer = EntryId.of(name(site));
        if (open.entries().customer(payer).found().isPresent()) {
            taken.add(known(CUSTOMER, payer, new Place(site.id(), 0, CUSTOMER + "." + NAME)));
        }
        return taken;
    }

    private static String name(Form site) {
        return site.tree() instanceof Tree.Branch branch
                && branch.entries().get(CUSTOMER) instanceof Tree.Branch customer
                        ? Form.of(customer, "").text(NAME).orElse("")
                        : "";
    }

    private static Problem known(String what, String id, Place place) {
        return new Problem(Code.ALREADY_EXISTS, place, "the book has a " + what + " \"" + id + "\" already",
                "choose the site in the book, or another name");
    }
}
