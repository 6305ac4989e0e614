package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Money that went back to a customer for a credit note.
 *
 * @param amount positive
 * @param reference such as the number of a check
 */
public record PaidBack(LocalDate date, MonetaryAmount amount, Optional<String> reference, Place place) {}
