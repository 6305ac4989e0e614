package icequill.pricer;

import icequill.agreement.PlannedVisit;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.money.Shares;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What the shop earns on a year of an agreement. Never shown to a customer.
 *
 * @param calls what the included calls cost the shop
 * @param cost of all visits and included calls
 * @param margin price less cost; negative for a loss
 */
public record AgreementMargin(List<Slot> slots, Cost calls, MonetaryAmount price, MonetaryAmount cost,
        MonetaryAmount margin) {

    /**
     * One visit's part.
     *
     * @param list at list price
     * @param price its share of the year's price without the reserve for calls, by largest remainder of the list prices
     * @param margin price less cost
     */
    public record Slot(PlannedVisit visit, MonetaryAmount list, MonetaryAmount price, MonetaryAmount cost,
            MonetaryAmount margin) {}

    public AgreementMargin {
        slots = List.copyOf(slots);
    }

    /** The margins of the slots, and of the reserve for calls, add up to that of the year. */
    public static AgreementMargin of(PricedAgreement agreement) {
        CurrencyUnit currency = agreement.price().getCurrency();
        Cost calls = calls(agreement, currency);
        List<MonetaryAmount> lists = agreement.slots().stream().map(slot -> slot.priced().net()).toList();
        List<MonetaryAmount> shares = shares(agreement.price().subtract(agreement.reserve()), lists);
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            PricedSlot slot = agreement.slots().get(i);
            MonetaryAmount cost = slot.priced().cost();
            slots.add(new Slot(slot.visit(), lists.get(i), shares.get(i), cost, shares.get(i).subtract(cost)));
        }
        MonetaryAmount cost = Amounts.sum(Stream.concat(slots.stream().map(Slot::cost), Stream.of(calls.amount()))
                .toList(), currency);
        return new AgreementMargin(slots, calls, agreement.price(), cost, agreement.price().subtract(cost));
    }

    /** Where nothing is charged at list, every visit gets the same share. */
    private static List<MonetaryAmount> shares(MonetaryAmount price, List<MonetaryAmount> lists) {
        boolean free = lists.stream().allMatch(MonetaryAmount::isZero);
        return Shares.byLargestRemainder(price,
                lists.stream().map(list -> free ? BigDecimal.ONE : Amounts.number(list)).toList());
    }

    private static Cost calls(PricedAgreement agreement, CurrencyUnit currency) {
        Explanation how = agreement.calls()
                .map(calls -> Explanation.of(
                        Figure.term(calls.expected(), "").times(Figure.price(calls.meanCost(), ""))
                                .rounded(Rounding.COST, currency),
                        Phrase.of("owner.included-calls", new Fact.Measure(calls.expected(), ""),
                                new Fact.Amount(calls.meanCost()))))
                .orElseGet(() -> Explanation.of(Figure.price(Amounts.zero(currency), ""), Phrase.of("owner.none")));
        return new Cost(how.amount(currency), how);
    }
}
