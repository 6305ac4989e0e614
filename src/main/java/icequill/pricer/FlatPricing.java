package icequill.pricer;

import icequill.agreement.FlatPrices;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.pricer.ResolvedVisit.AtFlatPrice;
import icequill.work.ChargeClass;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** Prices planned work at a flat price for each machine: the dearest in full, each further one less a percentage. */
record FlatPricing(FlatPrices prices, CurrencyUnit currency) {

    /** @param costs of the labor and doses that the prices stand for, each already rounded */
    List<Charge> charges(List<AtFlatPrice> machines, List<Figure> costs) {
        List<AtFlatPrice> dearestFirst = machines.stream()
                .sorted(Comparator.comparing((AtFlatPrice each) -> each.row().price()).reversed()).toList();
        List<Charge> charges = new ArrayList<>();
        for (AtFlatPrice each : dearestFirst) {
            charges.add(charges.isEmpty() ? full(each, costs) : further(each));
        }
        return charges;
    }

    private Charge full(AtFlatPrice each, List<Figure> costs) {
        Explanation cost = Explanation.of(
                costs.stream().reduce(Figure::plus).orElse(Figure.price(each.row().price().multiply(0), "")),
                Phrase.of("owner.flat", Names.of(each.row().place())));
        return charge(each, Optional.of(new UnitPrice(each.row().price(), Unit.EACH)),
                Figure.price(each.row().price(), ""), List.of(Phrase.of("reason.flat")),
                new Cost(cost.amount(currency), cost));
    }

    private Charge further(AtFlatPrice each) {
        Figure list = prices.further().isZero()
                ? Figure.price(each.row().price(), "")
                : Figure.price(each.row().price(), "")
                        .times(Figure.percent(Percent.HUNDRED).minus(Figure.percent(prices.further())))
                        .rounded(Rounding.LINE, currency);
        return charge(each, Optional.empty(), list,
                List.of(Phrase.of("reason.flat"),
                        Phrase.of("reason.flat-further", new Fact.Part(prices.further()))),
                Cost.none(currency, "owner.in-first-machine"));
    }

    private static Charge charge(AtFlatPrice each, Optional<UnitPrice> price, Figure list, List<Phrase> reasons,
            Cost cost) {
        return new Charge(ChargeClass.CLEANING, each.outcome(), Phrase.of("line.flat", Names.of(each.scope().name())),
                Optional.of(each.machine()), Quantity.of(1, Unit.EACH), price, list, reasons, cost);
    }
}
