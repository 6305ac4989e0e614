package icequill.shop;

import icequill.files.form.Form;
import icequill.files.form.FormKind;
import icequill.files.form.StoredForms;
import icequill.party.Customer;
import icequill.problem.Validated;
import icequill.shop.steps.AgreementSteps;
import icequill.work.PurchaseOrder;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Where the forms are kept that nobody hands over: the shop's book. */
public interface FormSource {

    /** Billed through the account that he belongs to, where nobody is named for himself; empty when there is none of that id. */
    Validated<Optional<Customer>> customer(String id);

    /**
     * Empty when there is none of that id.
     *
     * @param day on which it is asked for whose it was; empty for now
     */
    Validated<Optional<StoredForms.Stored>> site(String id, Optional<LocalDate> day);

    /** The id of a customer, and those of the accounts above him. */
    Validated<List<String>> accounts(String customer);

    /**
     * Any other form; empty when there is none.
     *
     * @param name its id, or an agreement's number
     */
    Validated<Optional<Form>> form(FormKind kind, String name);

    /** Of one site, by id. */
    Validated<List<Form>> agreementsAt(String site);

    /** Visits that were done at a site and stand, by its id; those of a customer who was forgotten are not known any more. */
    Validated<List<Form>> visitsAt(String site);

    /** What happened to an agreement since it was accepted, by its number. */
    Validated<AgreementSteps> stepsOf(String agreement);

    /** What was sold ahead at a site and billed, by the site's id, the oldest first. */
    Validated<List<SoldAhead>> soldAhead(String site);

    /** Visits of a site, by its id, that answered calls and are neither withdrawn nor given back. */
    Validated<List<Form>> answeredCalls(String site);

    /** What the customer ordered by a call, with the limit as it was allowed last; empty when there is no call of that id. */
    Validated<Optional<PurchaseOrder>> orderOfCall(String id);

    /** The ids of all of a kind, for a message about an unknown one. */
    Validated<List<String>> ids(FormKind kind);
}
