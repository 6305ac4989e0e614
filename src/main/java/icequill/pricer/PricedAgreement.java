package icequill.pricer;

import icequill.agreement.Tier;
import icequill.explain.Explanation;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a year of an agreement costs, before tax.
 *
 * @param list the planned visits by themselves
 * @param discount off them; positive
 * @param reserve for included calls
 * @param price list less discount, plus reserve, rounded to the tier's price step
 * @param how the price was figured, for the customer
 * @param reserveHow how the reserve was figured, for the owner alone
 * @param calls what the reserve was figured from
 */
public record PricedAgreement(Tier tier, List<PricedSlot> slots, MonetaryAmount list, MonetaryAmount discount,
        MonetaryAmount reserve, MonetaryAmount price, Explanation how, Explanation reserveHow,
        Optional<CallReserve> calls) {

    public PricedAgreement {
        slots = List.copyOf(slots);
    }
}
