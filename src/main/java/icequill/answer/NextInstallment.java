package icequill.answer;

import icequill.agreement.Installment;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Which installment of an agreement is to be billed next.
 *
 * @param installment the first that has no invoice which stands; empty when all are billed
 */
public record NextInstallment(String agreement, Optional<One> installment) {

    /**
     * One of them.
     *
     * @param number from 1
     * @param net before tax
     */
    public record One(int number, LocalDate due, MonetaryAmount net) {

        public static One of(Installment installment) {
            return new One(installment.number(), installment.due(), installment.amount());
        }

        /** Number, day and sum. */
        public String text() {
            return "installment " + number + ", due " + due + ", " + net.getCurrency().getCurrencyCode() + " "
                    + Amounts.plain(net) + " before tax";
        }
    }
}
