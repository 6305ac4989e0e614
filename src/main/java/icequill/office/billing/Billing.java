package icequill.office.billing;

import icequill.document.Bill;
import icequill.ledger.papers.IssuedPaper;

/** An invoice that was issued. */
public record Billing(IssuedPaper issued, Bill bill) {}
