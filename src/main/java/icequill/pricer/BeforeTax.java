package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.rates.IncludedTax;
import icequill.rates.IncludedTax.Part;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Takes the tax out of the lines of a visit whose prices are shown with it. By line each is rounded by itself; else all lines of one
 * rate come together to their sum without its tax, rounded once: each line is what they come to up to it, less the lines before.
 * What is left of a line after the discount on the whole and the line's share of that are each figured so.
 */
record BeforeTax(PricedVisit visit, IncludedTax tax) {

    PricedVisit priced() {
        boolean furnished = visit.furnishes();
        Map<String, Sums> byRate = new HashMap<>();
        List<PricedLine> lines = new ArrayList<>();
        List<MonetaryAmount> shares = new ArrayList<>();
        List<MonetaryAmount> shown = new ArrayList<>();
        for (int i = 0; i < visit.lines().size(); i++) {
            PricedLine line = visit.lines().get(i);
            MonetaryAmount share = visit.share(i);
            shown.add(line.net().subtract(share));
            Optional<Part> part = tax.of(line.chargeClass(), furnished);
            if (part.isEmpty()) {
                lines.add(line);
                shares.add(share);
            } else {
                Sums sums = byRate.computeIfAbsent(part.get().rate(), rate -> new Sums(visit.currency()));
                Figure gross = line.how().figure();
                Figure off = Figure.price(share, "");
                Figure base = sums.bases.next(share.isZero() ? gross : gross.minus(off), part.get().percent(),
                        tax.byLine());
                Figure shareOff = sums.shares.next(off, part.get().percent(), tax.byLine());
                shares.add(amount(shareOff));
                lines.add(without(line, part.get().percent(), share.isZero() ? base : base.plus(shareOff)));
            }
        }
        return new PricedVisit(visit.currency(), lines,
                visit.discount().map(discount -> without(discount, shares)), shown);
    }

    /** What lines of one rate came to so far. */
    private static final class Sums {

        private final Running bases;
        private final Running shares;

        Sums(CurrencyUnit currency) {
            bases = new Running(currency);
            shares = new Running(currency);
        }
    }

    /** A sum that grows line by line, with its tax and without. */
    private static final class Running {

        private MonetaryAmount with;
        private MonetaryAmount without;

        Running(CurrencyUnit currency) {
            with = Amounts.zero(currency);
            without = with;
        }

        Figure next(Figure shown, Percent percent, boolean byItself) {
            CurrencyUnit currency = with.getCurrency();
            boolean first = byItself || with.isZero();
            Figure upTo = (first ? shown : Figure.price(with, "").plus(shown))
                    .over(Figure.percent(Percent.HUNDRED.plus(percent))).rounded(Rounding.BEFORE_TAX, currency);
            Figure own = first ? upTo : upTo.minus(Figure.price(without, ""));
            with = with.add(Explanation.of(shown).amount(currency));
            without = without.add(Explanation.of(own).amount(currency));
            return own;
        }
    }

    private PricedLine without(PricedLine line, Percent percent, Figure net) {
        Explanation how = new Explanation(net, line.how().reasons())
                .because(Phrase.of("reason.tax-taken-out", new Fact.Amount(line.net()), new Fact.Part(percent)));
        MonetaryAmount before = how.amount(visit.currency());
        MonetaryAmount allowance = amount(alone(line.allowance(), percent));
        return new PricedLine(line.chargeClass(), line.outcome(), line.text(), line.machine(), line.quantity(),
                line.unitPrice().map(price -> without(price, percent)), before.add(allowance), allowance, before, how,
                line.cost());
    }

    private UnitPrice without(UnitPrice price, Percent percent) {
        return new UnitPrice(Amounts.of(Rounding.UNIT_PRICE.round(
                Figure.price(price.amount(), "").over(Figure.percent(Percent.HUNDRED.plus(percent))).exact(),
                visit.currency()), visit.currency()), price.per());
    }

    private SharedDiscount without(SharedDiscount discount, List<MonetaryAmount> shares) {
        Explanation how = Explanation.of(
                shares.stream().filter(share -> !share.isZero()).map(share -> Figure.price(share, ""))
                        .reduce(Figure::plus).orElseGet(() -> Figure.price(Amounts.zero(visit.currency()), "")),
                Phrase.of("reason.discount-with-tax", new Fact.Amount(discount.amount())));
        return new SharedDiscount(discount.text(), how.amount(visit.currency()), how, shares);
    }

    private Figure alone(MonetaryAmount amount, Percent percent) {
        return Figure.price(amount, "").over(Figure.percent(Percent.HUNDRED.plus(percent)))
                .rounded(Rounding.BEFORE_TAX, visit.currency());
    }

    private MonetaryAmount amount(Figure figure) {
        return Explanation.of(figure).amount(visit.currency());
    }
}
