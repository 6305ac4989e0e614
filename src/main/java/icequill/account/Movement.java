package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * One thing that changed what the customer owes.
 *
 * @param numbers of the invoice or credit note that it is, or of those that it is for; none for a payment on account
 * @param reference purchase order of an invoice, the payer's reference of a payment, the invoice that a credit note corrects
 * @param amount negative where the customer owes less by it
 * @param tax of what was taken off for paying early, negative or zero; none of anything else
 */
public record Movement(LocalDate date, Kind kind, List<String> numbers, Optional<String> reference,
        MonetaryAmount amount, Optional<MonetaryAmount> tax, Place place) {

    /** In the order in which those of one day are listed. */
    public enum Kind {
        INVOICE, CREDIT_NOTE, PAYMENT,
        /** For invoices, and the rest on account. */
        PART_ON_ACCOUNT, ON_ACCOUNT,
        /** Taken off an invoice that was paid early. */
        EARLY_PAYMENT, PAID_BACK
    }

    public Movement {
        numbers = List.copyOf(numbers);
    }
}
