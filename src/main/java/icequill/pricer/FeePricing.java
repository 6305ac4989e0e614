package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.rates.Fee;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/** Prices fees, on the discounted nets of what is charged; where nothing is, there are none. */
record FeePricing(List<PricedLine> lines, CurrencyUnit currency) {

    FeePricing {
        lines = lines.stream().filter(line -> line.net().isPositive()).toList();
    }

    Optional<PricedLine> line(Fee fee) {
        return lines.isEmpty() ? Optional.empty() : how(fee.amount()).map(how -> line(fee, how));
    }

    private Optional<Explanation> how(Fee.Amount amount) {
        return switch (amount) {
        case Fee.Flat flat -> flat(flat);
        case Fee.Part part -> part(part);
        };
    }

    private Optional<Explanation> flat(Fee.Flat flat) {
        MonetaryAmount sum = sum(lines);
        Explanation how = Explanation.of(Figure.price(flat.amount(), ""));
        return flat.under().isEmpty()
                ? Optional.of(how)
                : flat.under().filter(sum::isLessThan).map(limit -> how.because(
                        Phrase.of("reason.fee-under", new Fact.Amount(sum), new Fact.Amount(limit))));
    }

    private Optional<Explanation> part(Fee.Part part) {
        MonetaryAmount base = sum(lines.stream().filter(line -> part.on().contains(line.chargeClass())).toList());
        if (base.isZero()) {
            return Optional.empty();
        }
        Figure figure = Figure.percent(part.percent()).times(Figure.price(base, "")).rounded(Rounding.SURCHARGE,
                currency);
        Explanation bare = Explanation.of(figure,
                Phrase.of("reason.surcharge", new Fact.Part(part.percent()), new Fact.Amount(base)));
        MonetaryAmount amount = bare.amount(currency);
        Optional<MonetaryAmount> floor = part.floor().filter(amount::isLessThan);
        Optional<MonetaryAmount> cap = part.cap().filter(amount::isGreaterThan);
        return Optional.of(floor.map(least -> limited(part, base, amount, least, "reason.fee-floor"))
                .or(() -> cap.map(most -> limited(part, base, amount, most, "reason.fee-cap"))).orElse(bare));
    }

    private static Explanation limited(Fee.Part part, MonetaryAmount base, MonetaryAmount without,
            MonetaryAmount limit, String why) {
        return Explanation.of(Figure.price(limit, ""), Phrase.of(why, new Fact.Part(part.percent()),
                new Fact.Amount(base), new Fact.Amount(without)));
    }

    private MonetaryAmount sum(List<PricedLine> some) {
        return Amounts.sum(some.stream().map(PricedLine::net).toList(), currency);
    }

    private PricedLine line(Fee fee, Explanation how) {
        return PricedLine.bare(fee.chargeClass(), Phrase.of("line.fee", Names.of(fee.name())), how, currency);
    }
}
