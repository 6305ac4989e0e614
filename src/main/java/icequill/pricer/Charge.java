package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.money.Rounding;
import icequill.party.Machine;
import icequill.rates.ClassDiscount;
import icequill.work.ChargeClass;
import icequill.work.OneOff;
import icequill.work.Outcome;
import icequill.work.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A charge at its list price, which {@link #line} turns into a line: what the customer does not pay is taken off as an
 * allowance, and so is a class discount or one given for this once, of which the better for the customer holds. What is taken back
 * bears none.
 *
 * @param list the list price's figure, already rounded
 * @param less what is taken off for this once
 * @param drawn what was sold ahead and pays for it
 */
record Charge(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<Machine> machine, Quantity quantity,
        Optional<UnitPrice> unitPrice, Figure list, List<Phrase> reasons, Cost cost,
        Optional<OneOff> less, Optional<Drawn> drawn) {

    Charge(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<Machine> machine, Quantity quantity,
            Optional<UnitPrice> unitPrice, Figure list, List<Phrase> reasons, Cost cost) {
        this(chargeClass, outcome, text, machine, quantity, unitPrice, list, reasons, cost, Optional.empty(),
                Optional.empty());
    }

    Charge(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<Machine> machine, Quantity quantity,
            Optional<UnitPrice> unitPrice, Figure list, List<Phrase> reasons, Cost cost, Optional<OneOff> less) {
        this(chargeClass, outcome, text, machine, quantity, unitPrice, list, reasons, cost, less, Optional.empty());
    }

    /** The same, paid by what was sold ahead. */
    Charge paidBy(Drawn block) {
        return new Charge(chargeClass, outcome, text, machine, quantity, unitPrice, list, reasons, cost, less,
                Optional.of(block));
    }

    /** What is taken off the list price, and why. */
    private record Off(Figure figure, List<Phrase> why) {

        Off(Figure figure, Phrase why) {
            this(figure, List.of(why));
        }

        BigFraction amount() {
            return figure.exact();
        }
    }

    PricedLine line(List<ClassDiscount> discounts, CurrencyUnit currency) {
        MonetaryAmount listPrice = new Explanation(list, List.of()).amount(currency);
        List<Phrase> why = new ArrayList<>(reasons);
        Optional<Off> off = off(listPrice, discounts, currency);
        off.map(Off::why).ifPresent(why::addAll);
        Explanation net = new Explanation(off.map(found -> list.minus(found.figure())).orElse(list), why);
        MonetaryAmount netPrice = net.amount(currency);
        return new PricedLine(chargeClass, outcome, text, machine.map(Machine::id), quantity, unitPrice, listPrice,
                listPrice.subtract(netPrice), netPrice, net,
                outcome.isDone() ? cost : Cost.none(currency, "owner.none"));
    }

    private Optional<Off> off(MonetaryAmount listPrice, List<ClassDiscount> discounts, CurrencyUnit currency) {
        if (!outcome.isCharged()) {
            return Optional.of(new Off(part(Percent.HUNDRED, listPrice, currency), notCharged()));
        }
        if (drawn.isPresent()) {
            return drawn.map(block -> new Off(part(Percent.HUNDRED, listPrice, currency), block.why()));
        }
        if (listPrice.isNegative()) {
            return Optional.empty();
        }
        Optional<Off> byClass = best(discounts).filter(found -> !found.of(chargeClass).isZero()).map(
                found -> new Off(part(found.of(chargeClass), listPrice, currency), why(found)));
        Optional<Off> once = less.map(found -> once(found, listPrice, currency))
                .filter(found -> found.amount().signum() > 0);
        return once.filter(found -> byClass.filter(other -> other.amount().compareTo(found.amount()) > 0).isEmpty())
                .or(() -> byClass);
    }

    private static Off once(OneOff less, MonetaryAmount listPrice, CurrencyUnit currency) {
        Fact reason = new Fact.Text(less.reason());
        return switch (less.off()) {
        case Reduction.Part off -> new Off(part(off.percent(), listPrice, currency),
                Phrase.of("reason.one-off", reason, new Fact.Part(off.percent())));
        case Reduction.Fixed off when off.amount().isGreaterThan(listPrice) -> new Off(Figure.price(listPrice, ""),
                Phrase.of("reason.one-off-capped", reason, new Fact.Amount(off.amount())));
        case Reduction.Fixed off -> new Off(Figure.price(off.amount(), ""),
                Phrase.of("reason.one-off", reason, new Fact.Amount(off.amount())));
        };
    }

    private static Figure part(Percent percent, MonetaryAmount listPrice, CurrencyUnit currency) {
        return Figure.percent(percent).times(Figure.price(listPrice, "")).rounded(Rounding.ALLOWANCE, currency);
    }

    private Phrase why(ClassDiscount discount) {
        Fact percent = new Fact.Part(discount.of(chargeClass));
        return discount.agreement()
                .map(number -> Phrase.of("reason.agreement-discount", new Fact.Text(number), percent))
                .orElseGet(() -> Phrase.of("reason.class-discount", Names.of(discount.name()), percent));
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
