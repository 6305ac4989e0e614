package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An invoice on a customer's account.
 *
 * @param due the last day to pay
 * @param total with tax
 * @param store the customer's own number of the site that it is for
 */
public record Invoiced(String number, LocalDate date, LocalDate due, MonetaryAmount total,
        Optional<String> purchaseOrder, Optional<String> store, Optional<Dispute> dispute,
        Place place) {

    /**
     * What the customer objects to.
     *
     * @param amount that he holds back; empty for all that is open
     */
    public record Dispute(String reason, Optional<MonetaryAmount> amount, Place place) {}
}
