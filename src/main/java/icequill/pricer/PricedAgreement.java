package icequill.pricer;

import icequill.agreement.Reach;
import icequill.agreement.Tier;
import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.rates.ClassDiscount;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What a year of an agreement costs, before tax.
 *
 * @param list the planned visits by themselves
 * @param discount off them; positive
 * @param discountLabel what the line of the discount says
 * @param reserve for included calls
 * @param reach of the whole agreement, by which it was discounted
 * @param sheets whose discounts the customer has
 * @param price list less discount, plus reserve, rounded to the tier's price step
 * @param how the price was figured, for the customer
 * @param reserveHow how the reserve was figured, for the owner alone
 * @param calls what the reserve was figured from
 */
public record PricedAgreement(Tier tier, Reach reach, List<ClassDiscount> sheets, List<PricedSlot> slots,
        MonetaryAmount list, MonetaryAmount discount, Phrase discountLabel,
        MonetaryAmount reserve, MonetaryAmount price, Explanation how, Explanation reserveHow,
        Optional<CallReserve> calls) {

    public PricedAgreement {
        slots = List.copyOf(slots);
        sheets = List.copyOf(sheets);
    }

    /** What the line of the discount says where it is not the tier's own. */
    public Optional<Phrase> otherDiscount() {
        return Optional.of(discountLabel).filter(label -> !label.key().equals("plan.discount"));
    }

    /** What is said of the discount where plans stand side by side. */
    public Phrase discountPerk() {
        return new Phrase(discountLabel.key().replace("plan.", "choice."), discountLabel.facts());
    }
}
