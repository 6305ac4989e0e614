package icequill.answer;

import icequill.agreement.Installment;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Which payment of an agreement is to be billed next.
 *
 * @param payment the first that has no invoice which stands; empty when all are billed
 */
public record NextPayment(String agreement, Optional<Payment> payment) {

    /**
     * One payment.
     *
     * @param number from 1
     * @param net before tax
     */
    public record Payment(int number, LocalDate due, MonetaryAmount net) {

        public static Payment of(Installment installment) {
            return new Payment(installment.number(), installment.due(), installment.amount());
        }

        /** Number, day and sum. */
        public String text() {
            return "payment " + number + ", due " + due + ", " + net.getCurrency().getCurrencyCode() + " "
                    + Amounts.plain(net) + " before tax";
        }
    }
}
