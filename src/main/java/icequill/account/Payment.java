package icequill.account;

import icequill.problem.Place;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * Money that came in, or that went back.
 *
 * @param amount positive
 * @param reference the payer's, such as the number of a check
 */
public record Payment(LocalDate date, MonetaryAmount amount, Optional<String> reference, Place place) {}
