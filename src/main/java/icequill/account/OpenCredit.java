package icequill.account;

import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What the customer has to his credit and that is not set off.
 *
 * @param number of the credit note; empty for a payment on account
 * @param open positive
 */
public record OpenCredit(Optional<String> number, LocalDate date, MonetaryAmount open) {}
