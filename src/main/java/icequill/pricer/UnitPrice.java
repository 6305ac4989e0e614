package icequill.pricer;

import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.rates.Material;
import icequill.work.Unit;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** A price for one of a unit, which for time is the hour though the quantity counts minutes. */
public record UnitPrice(MonetaryAmount amount, Unit per) {

    /** What is charged for one unit of a material, or for one pack of it. */
    public static MonetaryAmount of(Material material, CurrencyUnit currency) {
        return switch (material.price()) {
        case Material.Given given -> given.price();
        case Material.MarkedUp marked -> markedUp(marked.cost(), marked.markup(), currency);
        };
    }

    /** What follows from a cost and a markup on it, to four decimals. */
    static MonetaryAmount markedUp(MonetaryAmount cost, Percent markup, CurrencyUnit currency) {
        return Amounts.of(Rounding.UNIT_PRICE.round(
                Figure.price(cost, "").times(Figure.percent(Percent.HUNDRED.plus(markup))).exact(), currency),
                currency);
    }
}
