package icequill.document;

import java.time.LocalDate;
import java.util.Optional;

/** A paper that charges something or gives it back: what the customer's books take in. */
public sealed interface Bill extends PricedPaper permits Invoice, CombinedInvoice, InstallmentInvoice, StageInvoice,
        CreditNote {

    /** The last day to pay; empty where nothing is asked for. */
    Optional<LocalDate> dueDate();
}
