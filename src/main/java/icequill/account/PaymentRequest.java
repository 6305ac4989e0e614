package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A payment as it is handed in.
 *
 * @param customer whose it is, by id
 * @param amount positive
 * @param isBack whether it went to the customer, for credit notes
 * @param reference the payer's, such as the number of a check
 * @param bills what it is for, in order; empty where that is not said, and no bill where all of it is on account
 */
public record PaymentRequest(String customer, LocalDate day, MonetaryAmount amount, Way way, boolean isBack,
        Optional<String> reference, Optional<List<Named>> bills, Place place) {

    /**
     * A bill that a payment is for.
     *
     * @param amount empty for all that is open, as far as the payment goes
     * @param day from which it counts; empty for the payment's, or the bill's if that is later
     */
    public record Named(String number, Optional<MonetaryAmount> amount, Optional<LocalDate> day, Place place) {}

    public PaymentRequest {
        bills = bills.map(List::copyOf);
    }
}
