package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A credit note on a customer's account.
 *
 * @param total positive
 * @param corrects the invoice it is set off against, as far as that is open; what is left over stays a credit
 * @param paidBack what the customer got back in money, in any order
 */
public record Credited(String number, LocalDate date, MonetaryAmount total, Optional<String> corrects,
        List<PaidBack> paidBack, Place place) {

    public Credited {
        paidBack = List.copyOf(paidBack);
    }
}
