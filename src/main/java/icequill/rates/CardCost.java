package icequill.rates;

import icequill.money.Percent;
import javax.money.MonetaryAmount;

/**
 * What it costs the shop to be paid by card.
 *
 * @param percent of what is paid, with its tax
 * @param each for every payment besides
 */
public record CardCost(Percent percent, MonetaryAmount each) {}
