package icequill.pricer;

import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.work.Outcome;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * All lines of a visit with their prices, before tax.
 *
 * @param shown what each line was shown at with its tax, less its share of the discount; empty where prices are shown before tax
 */
public record PricedVisit(CurrencyUnit currency, List<PricedLine> lines, Optional<SharedDiscount> discount,
        List<MonetaryAmount> shown) {

    public PricedVisit {
        lines = List.copyOf(lines);
        shown = List.copyOf(shown);
    }

    /** At prices that are shown before tax. */
    public PricedVisit(CurrencyUnit currency, List<PricedLine> lines, Optional<SharedDiscount> discount) {
        this(currency, lines, discount, List.of());
    }

    /** The same with a further reason at the lines of an outcome. */
    public PricedVisit because(Outcome outcome, Phrase reason) {
        return new PricedVisit(currency,
                lines.stream().map(line -> line.outcome() == outcome ? line.because(reason) : line).toList(), discount,
                shown);
    }

    /** Whether something is furnished on the visit, and not only taken back. */
    public boolean furnishes() {
        return lines.stream().anyMatch(line -> line.chargeClass().isFurnished() && line.outcome().isDone()
                && !line.net().isNegative());
    }

    /** The lines' nets, less the document discount. */
    public MonetaryAmount net() {
        MonetaryAmount sum = Amounts.sum(lines.stream().map(PricedLine::net).toList(), currency);
        return discount.map(off -> sum.subtract(off.amount())).orElse(sum);
    }

    /** What the line at a position was shown at, less its share of the discount: with its tax where prices are shown so. */
    MonetaryAmount asShown(int line) {
        return shown.isEmpty() ? lines.get(line).net().subtract(share(line)) : shown.get(line);
    }

    /** What the lines cost the shop. */
    public MonetaryAmount cost() {
        return Amounts.sum(lines.stream().map(line -> line.cost().amount()).toList(), currency);
    }

    /** What the lines come to of which nobody knows what they cost, less their shares of the document discount. */
    public MonetaryAmount withoutCost() {
        return Amounts.sum(IntStream.range(0, lines.size()).filter(i -> !lines.get(i).cost().isKnown())
                .mapToObj(i -> lines.get(i).net().subtract(share(i))).toList(), currency);
    }

    /** What the lines earn of which it is known what they cost. */
    public MonetaryAmount margin() {
        return net().subtract(withoutCost()).subtract(cost());
    }

    /** The share of the document discount that falls on the line at a position. */
    public MonetaryAmount share(int line) {
        return discount.map(off -> off.shares().get(line)).orElse(Amounts.zero(currency));
    }
}
