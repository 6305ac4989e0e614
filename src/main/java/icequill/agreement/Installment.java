package icequill.agreement;

import icequill.explain.Explanation;
import java.time.LocalDate;
import javax.money.MonetaryAmount;

/**
 * One of the payments that an agreement's price is divided into. Each is a sale of its own at its own date, so its tax is not
 * known before.
 *
 * @param number from 1
 * @param amount before tax; negative where it only changes another one downwards
 */
public record Installment(int number, LocalDate due, MonetaryAmount amount, Explanation how) {}
