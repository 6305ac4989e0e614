package icequill.answer.amounts;

import icequill.account.Owed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An invoice of which something is open.
 *
 * @param paid and {@code credited}: negative
 * @param disputed what of it the customer does not accept
 */
public record OpenBill(String number, LocalDate due, MonetaryAmount total, MonetaryAmount paid,
        MonetaryAmount credited, MonetaryAmount open, Optional<MonetaryAmount> disputed) {

    static OpenBill of(Owed owed) {
        return new OpenBill(owed.number(), owed.due(), owed.total(), owed.paid().negate(), owed.credited().negate(),
                owed.open(), owed.disputed().map(Owed.Disputed::amount));
    }

    static List<OpenBill> of(List<Owed> owed) {
        return owed.stream().map(OpenBill::of).toList();
    }
}
