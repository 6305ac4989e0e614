package icequill.answer.amounts;

import icequill.agreement.Installment;
import java.time.LocalDate;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * An installment of an agreement, before tax.
 *
 * @param number from 1
 */
public record DueAmount(int number, LocalDate due, MonetaryAmount amount) {

    static List<DueAmount> of(List<Installment> installments) {
        return installments.stream().map(one -> new DueAmount(one.number(), one.due(), one.amount())).toList();
    }
}
