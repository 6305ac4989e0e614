package icequill.ledger.entries;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A payment in the book.
 *
 * @param amount positive and whole
 * @param way by the name of it
 * @param isBack whether it went to the customer; otherwise it came in
 * @param reference the payer's; empty too where the customer was forgotten since
 * @param shares what of it is for which bill, in the order in which they were noted; the rest is on account
 */
public record PaymentEntry(String id, String customer, LocalDate day, MonetaryAmount amount, String way,
        boolean isBack, Optional<String> reference, List<Share> shares) {

    /**
     * What of it is for one bill.
     *
     * @param bill by its number
     * @param day from which it counts
     */
    public record Share(String bill, LocalDate day, MonetaryAmount amount) {}

    public PaymentEntry {
        shares = List.copyOf(shares);
    }
}
