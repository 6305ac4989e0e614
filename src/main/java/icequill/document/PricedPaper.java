package icequill.document;

import icequill.party.BillTo;
import java.util.List;
import java.util.Optional;

/** A paper with lines, taxes and a total. All its amounts are positive. */
public sealed interface PricedPaper extends Paper permits Bill, Offer {

    /** Empty while it is a draft. */
    Optional<String> number();

    BillTo billTo();

    /** The shop's number in the customer's books. */
    Optional<String> vendorNumber();

    ServicePeriod served();

    List<InvoiceLine> lines();

    Totals totals();

    default boolean isDraft() {
        return number().isEmpty();
    }
}
