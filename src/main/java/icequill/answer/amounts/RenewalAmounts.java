package icequill.answer.amounts;

import javax.money.MonetaryAmount;

/** Of a renewal notice: a year's price before and after. */
public record RenewalAmounts(MonetaryAmount oldPrice, MonetaryAmount newPrice, MonetaryAmount difference)
        implements
        PaperAmounts {}
