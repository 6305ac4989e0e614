package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.pricer.ResolvedVisit.Applied;
import icequill.rates.Modifier;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;

/** Prices modifiers: so many times a price, or minutes of an hourly price. */
final class ModifierPricing {

    private final CurrencyUnit currency;

    ModifierPricing(CurrencyUnit currency) {
        this.currency = currency;
    }

    /** @param costs what the modifier costs the shop, each already rounded; may be empty */
    Charge charge(Applied applied, List<Figure> costs) {
        Modifier modifier = applied.modifier();
        boolean timed = modifier.unit() == Unit.MINUTE;
        Unit per = timed ? Unit.HOUR : modifier.unit();
        Figure product = Figure.term(applied.quantity(), modifier.unit().symbol())
                .times(Figure.price(modifier.price(), per.symbol()));
        Figure list = (timed ? product.over(Figure.term(60, "min/h")) : product).rounded(Rounding.LINE, currency);
        List<Phrase> reasons = modifier.insteadOfLabor()
                ? List.of(Phrase.of("reason.instead-of-labor", Names.of(modifier.name())))
                : List.of();
        return new Charge(modifier.chargeClass(), applied.outcome(),
                Phrase.of("line.modifier", Names.of(modifier.name())),
                applied.machine(), new Quantity(applied.quantity(), modifier.unit()),
                Optional.of(new UnitPrice(modifier.price(), per)), list, reasons, cost(costs),
                applied.less());
    }

    private Cost cost(List<Figure> costs) {
        Figure sum = costs.stream().reduce(Figure::plus).orElse(Figure.price(Amounts.zero(currency), ""));
        Explanation how = Explanation.of(sum, Phrase.of(costs.isEmpty() ? "owner.none" : "owner.unbilled-time"));
        return new Cost(how.amount(currency), how);
    }
}
