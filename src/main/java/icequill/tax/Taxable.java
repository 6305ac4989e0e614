package icequill.tax;

import javax.money.MonetaryAmount;

/** An amount and the rate that applies to it. */
public record Taxable(TaxRate rate, MonetaryAmount base) {}
