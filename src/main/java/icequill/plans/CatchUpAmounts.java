package icequill.plans;

import icequill.money.Amounts;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What catching up adds to the first visit.
 *
 * @param price zero where nothing is planned, or nothing is neglected
 * @param cost of it to the shop; never shown to a customer
 */
public record CatchUpAmounts(MonetaryAmount price, MonetaryAmount cost) {

    public static CatchUpAmounts none(CurrencyUnit currency) {
        return new CatchUpAmounts(Amounts.zero(currency), Amounts.zero(currency));
    }
}
