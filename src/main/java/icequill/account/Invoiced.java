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
 * @param early what is enough if it is paid early; empty where only all of it is
 */
public record Invoiced(String number, LocalDate date, LocalDate due, MonetaryAmount total,
        Optional<String> purchaseOrder, Optional<String> store, Optional<Dispute> dispute,
        Optional<Early> early, Place place) {

    /** Without anything for paying early. */
    public Invoiced(String number, LocalDate date, LocalDate due, MonetaryAmount total, Optional<String> purchaseOrder,
            Optional<String> store, Optional<Dispute> dispute, Place place) {
        this(number, date, due, total, purchaseOrder, store, dispute, Optional.empty(), place);
    }

    /**
     * What is taken off an invoice that is paid early.
     *
     * @param until the last day on which the money may come
     * @param off what is taken off the total
     * @param tax of what is taken off; zero where the tax stays
     */
    public record Early(LocalDate until, MonetaryAmount off, MonetaryAmount tax) {}

    /**
     * What the customer objects to.
     *
     * @param amount that he holds back; empty for all that is open
     */
    public record Dispute(String reason, Optional<MonetaryAmount> amount, Place place) {}
}
