package icequill.office;

import icequill.document.Bill;
import icequill.ledger.IssuedPaper;

/** An invoice that was issued. */
record Billing(IssuedPaper issued, Bill bill) {}
