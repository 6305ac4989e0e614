package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.Machine;
import icequill.rates.ClassDiscount;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * A charge at its list price, which {@link #line} turns into a line: what the customer does not pay is taken off as an
 * allowance, and so is a class discount. What is taken back bears none.
 *
 * @param list the list price's figure, already rounded
 */
record Charge(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<Machine> machine, Quantity quantity,
        Optional<UnitPrice> unitPrice, Figure list, List<Phrase> reasons, Cost cost) {

    PricedLine line(List<ClassDiscount> discounts, CurrencyUnit currency) {
        MonetaryAmount listPrice = new Explanation(list, List.of()).amount(currency);
        List<Phrase> why = new ArrayList<>(reasons);
        Percent off = off(listPrice.isNegative() ? List.of() : discounts, why);
        Figure allowance = Figure.percent(off).times(Figure.price(listPrice, "")).rounded(Rounding.ALLOWANCE, currency);
        Explanation net = new Explanation(off.isZero() ? list : list.minus(allowance), why);
        MonetaryAmount netPrice = net.amount(currency);
        return new PricedLine(chargeClass, outcome, text, machine.map(Machine::id), quantity, unitPrice, listPrice,
                listPrice.subtract(netPrice), netPrice, net,
                outcome.isDone() ? cost : Cost.none(currency, "owner.none"));
    }

    /** The part of the list price to take off, its reason being added. */
    private Percent off(List<ClassDiscount> discounts, List<Phrase> why) {
        if (!outcome.isCharged()) {
            why.add(notCharged());
            return Percent.HUNDRED;
        }
        Optional<ClassDiscount> discount = best(discounts);
        Percent percent = discount.map(found -> found.of(chargeClass)).orElse(Percent.ZERO);
        if (!percent.isZero()) {
            why.add(discount.flatMap(ClassDiscount::agreement)
                    .map(number -> Phrase.of("reason.agreement-discount", new Fact.Text(number),
                            new Fact.Part(percent)))
                    .orElseGet(() -> Phrase.of("reason.class-discount", Names.of(discount.orElseThrow().name()),
                            new Fact.Part(percent))));
        }
        return percent;
    }

    /** The better for the customer; the first of equal ones. */
    private Optional<ClassDiscount> best(List<ClassDiscount> discounts) {
        Optional<ClassDiscount> best = discounts.stream().findFirst();
        for (ClassDiscount other : discounts) {
            best = best.filter(found -> other.of(chargeClass).value().compareTo(found.of(chargeClass).value()) <= 0)
                    .or(() -> Optional.of(other));
        }
        return best;
    }

    private Phrase notCharged() {
        return switch (outcome) {
        case CHARGED -> throw new IllegalStateException("charged");
        case INCLUDED -> Phrase.of("reason.outcome.included");
        case WARRANTY -> machine.flatMap(Machine::warranty)
                .map(warranty -> Phrase.of("reason.outcome.warranty", new Fact.Text(warranty.payer())))
                .orElseGet(() -> Phrase.of("reason.outcome.warranty-unnamed"));
        case CALLBACK -> Phrase.of("reason.outcome.callback");
        case GOODWILL -> Phrase.of("reason.outcome.goodwill");
        case DECLINED -> Phrase.of("reason.outcome.declined");
        };
    }

}
