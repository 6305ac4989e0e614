package icequill.document;

import icequill.agreement.Earning;
import icequill.agreement.Refund;
import java.time.LocalDate;

/**
 * How an agreement that ends early is settled, with an example.
 *
 * @param example the last day in the example
 * @param backThen what would be given back, had all payments due by that day been made, and all visits due by then
 */
public record RefundClause(Earning earning, LocalDate example, Refund backThen) {}
