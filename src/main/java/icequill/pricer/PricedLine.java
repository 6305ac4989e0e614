package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.work.ChargeClass;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.Optional;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * One line of a price.
 *
 * @param machine by id; empty when for the site as a whole
 * @param unitPrice empty where a line is not quantity times price
 * @param list before any allowance
 * @param allowance taken off the list price: a class discount, or all of it where the customer does not pay
 * @param net list less allowance; a share of a document discount is not yet taken off
 * @param how the net was figured, for the customer
 * @param cost what it costs the shop; the owner's alone
 */
public record PricedLine(ChargeClass chargeClass, Outcome outcome, Phrase text, Optional<String> machine,
        Quantity quantity,
        Optional<UnitPrice> unitPrice, MonetaryAmount list, MonetaryAmount allowance, MonetaryAmount net,
        Explanation how,
        Cost cost) {

    /** One of an amount for the visit as a whole that costs the shop nothing. */
    static PricedLine bare(ChargeClass chargeClass, Phrase text, Explanation how, CurrencyUnit currency) {
        MonetaryAmount net = how.amount(currency);
        return new PricedLine(chargeClass, Outcome.CHARGED, text, Optional.empty(), Quantity.of(1, Unit.EACH),
                Optional.empty(), net, Amounts.zero(currency), net, how, Cost.none(currency, "owner.none"));
    }

    PricedLine because(Phrase reason) {
        return new PricedLine(chargeClass, outcome, text, machine, quantity, unitPrice, list, allowance, net,
                how.because(reason), cost);
    }

    /** Whether something is sold ahead, to be used by later visits. */
    public boolean isSoldAhead() {
        return text.key().equals(Drawn.SALE);
    }

    /** Whether it is taken off because it was paid ahead. */
    public boolean isPaidAhead() {
        return text.key().equals(Drawn.PAID);
    }

    /** What it earns the shop; empty where nobody knows what it costs. */
    public Optional<MonetaryAmount> margin() {
        return cost.isKnown() ? Optional.of(net.subtract(cost.amount())) : Optional.empty();
    }
}
