package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * One thing that changed what the customer owes.
 *
 * @param number of the invoice or credit note that it is, or is for; empty for a payment on account
 * @param reference purchase order of an invoice, the payer's reference of a payment, the invoice that a credit note corrects
 * @param amount negative where the customer owes less by it
 */
public record Movement(LocalDate date, Kind kind, Optional<String> number, Optional<String> reference,
        MonetaryAmount amount, Place place) {

    /** In the order in which those of one day are listed. */
    public enum Kind {
        INVOICE, CREDIT_NOTE, PAYMENT, ON_ACCOUNT, PAID_BACK
    }
}
