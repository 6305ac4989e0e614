package icequill.document;

import java.time.LocalDate;

/** A paper that the customer may accept, as long as it holds. */
public sealed interface Offer extends PricedPaper permits RepairQuote {

    /** The last day on which it can be accepted at its price. */
    LocalDate validUntil();
}
