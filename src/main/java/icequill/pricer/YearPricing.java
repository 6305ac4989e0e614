package icequill.pricer;

import icequill.agreement.Reach;
import icequill.agreement.Tier;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.money.Stepping;
import icequill.rates.ClassDiscount;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Puts a year's price together from those of its visits.
 *
 * @param reach of the whole agreement
 * @param sheets whose discounts the customer has
 */
record YearPricing(Tier tier, Reach reach, List<ClassDiscount> sheets, CurrencyUnit currency) {

    /**
     * The visits summed, less the best discount that can be had, plus what included calls are expected to cost with its loading, to the price
     * step.
     *
     * @param nets of the visits, at least one
     */
    PricedAgreement price(List<PricedSlot> slots, List<MonetaryAmount> nets, Optional<CallReserve> calls) {
        List<Phrase> reasons = new ArrayList<>();
        Figure sum = nets.stream().map(net -> Figure.price(net, "")).reduce(Figure::plus).orElseThrow();
        PlannedDiscount discount = new PlannedDiscount.Offered(tier, reach, sheets, currency)
                .best(slots, Amounts.sum(nets, currency));
        reasons.addAll(discount.reasons());
        Figure figure = discount.isNone() ? sum : sum.minus(discount.off());
        Explanation reserve = calls.map(this::reserve)
                .orElseGet(() -> Explanation.of(Figure.price(Amounts.zero(currency), "")));
        if (calls.isPresent()) {
            reasons.add(Phrase.of("reason.included-calls", Fact.number(tier.included().number(), "call"),
                    new Fact.Amount(reserve.amount(currency))));
            figure = figure.plus(Figure.price(reserve.amount(currency), ""));
        }
        reasons.add(Phrase.of("reason.price-step", new Fact.Amount(tier.step())));
        Explanation how = new Explanation(figure.stepped(Stepping.NEAREST, tier.step()), reasons);
        return new PricedAgreement(tier, reach, sheets, slots, Amounts.sum(nets, currency), amount(discount.off()),
                discount.label(),
                reserve.amount(currency), how.amount(currency), how, reserve, calls);
    }

    /** For the owner: to the customer it is a price like any other. */
    private Explanation reserve(CallReserve calls) {
        Percent loading = tier.included().loading();
        return Explanation.of(
                Figure.percent(Percent.HUNDRED).plus(Figure.percent(loading)).times(Figure.term(calls.expected(), ""))
                        .times(Figure.price(calls.meanCharge(), "")).rounded(Rounding.RESERVE, currency),
                Phrase.of("owner.reserve", Fact.number(tier.included().number(), "call"),
                        new Fact.Measure(calls.expected(), ""), new Fact.Amount(calls.meanCharge()),
                        new Fact.Part(loading)));
    }

    private MonetaryAmount amount(Figure figure) {
        return new Explanation(figure, List.of()).amount(currency);
    }
}
