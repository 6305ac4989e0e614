package icequill.pricer;

import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Rounding;
import icequill.pricer.ResolvedVisit.OwnWords;
import icequill.work.OwnPrice.Given;
import icequill.work.OwnPrice.MarkedUp;
import icequill.work.Quantity;
import icequill.work.VisitLine;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices what no rates know: a quantity at the price that was written down, or at its cost with a markup. */
final class OwnPricing {

    private final CurrencyUnit currency;

    OwnPricing(CurrencyUnit currency) {
        this.currency = currency;
    }

    Charge charge(OwnWords own) {
        return charge(own, Phrase.of(own.line().block().isPresent() ? Drawn.SALE : "line.own",
                new Fact.Text(own.line().text())));
    }

    /** What sending costs. */
    Charge shipping(OwnWords own) {
        return charge(own, Phrase.of("line.shipping"));
    }

    /** What is taken back is a negative quantity: prices are never negative. */
    private Charge charge(OwnWords own, Phrase text) {
        VisitLine.Own line = own.line();
        BigDecimal number = line.back().isPresent() ? line.quantity().number().negate() : line.quantity().number();
        String unit = line.quantity().unit().symbol();
        MonetaryAmount price = switch (line.price()) {
        case Given given -> given.price();
        case MarkedUp marked -> UnitPrice.markedUp(marked.cost(), marked.markup(), currency);
        };
        Figure quantity = Figure.term(number, unit);
        List<Phrase> reasons = line.back().map(why -> List.of(Phrase.of("reason.back." + ConstantKey.of(why))))
                .or(() -> line.block().map(BlockPricing::sold)).orElse(List.of());
        return new Charge(line.chargeClass(), line.outcome(), text, own.machine(),
                new Quantity(number, line.quantity().unit()),
                Optional.of(new UnitPrice(price, line.quantity().unit())),
                quantity.times(Figure.price(price, unit)).rounded(Rounding.LINE, currency), reasons,
                cost(line, quantity, unit), line.less());
    }

    private Cost cost(VisitLine.Own line, Figure quantity, String unit) {
        return switch (line.price()) {
        case Given given -> given.cost().map(cost -> cost(line, cost, quantity, unit)).orElseGet(this::unknown);
        case MarkedUp marked -> {
            Cost cost = cost(line, marked.cost(), quantity, unit);
            yield new Cost(cost.amount(), cost.how()
                    .because(Phrase.of("owner.markup", new Fact.Part(marked.markup()), Names.of(line.place()))));
        }
        };
    }

    private Cost cost(VisitLine.Own line, MonetaryAmount each, Figure quantity, String unit) {
        Explanation how = Explanation.of(
                quantity.times(Figure.price(each, unit)).rounded(Rounding.COST, currency),
                Phrase.of("owner.material", new Fact.Amount(each), Names.of(line.place())));
        return new Cost(how.amount(currency), how);
    }

    private Cost unknown() {
        return Cost.unknown(currency);
    }
}
