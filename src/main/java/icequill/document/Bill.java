package icequill.document;

import icequill.party.BillTo;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A paper that charges something or gives it back: what the customer's books take in. All its amounts are positive. */
public sealed interface Bill extends Paper permits Invoice, CreditNote {

    /** Empty while it is a draft. */
    Optional<String> number();

    BillTo billTo();

    /** The shop's number in the customer's books. */
    Optional<String> vendorNumber();

    Served served();

    /** The last day to pay; empty where nothing is asked for. */
    Optional<LocalDate> dueDate();

    List<InvoiceLine> lines();

    Totals totals();

    default boolean isDraft() {
        return number().isEmpty();
    }
}
