package icequill.rates;

import icequill.money.Percent;

/**
 * That who pays early pays less, such as 2 % within 10 days.
 *
 * @param percent off; 0 where nothing is, as a sheet may say
 * @param days from the date of the invoice, in which the money must be here
 */
public record EarlyPaymentTerms(Percent percent, int days, On on) {

    /** What the percentage is of. */
    public enum On {
        NET, GROSS
    }
}
