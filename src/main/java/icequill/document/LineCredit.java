package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.pricer.UnitPrice;
import icequill.problem.Check;
import icequill.tax.LineTax;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A line of an invoice, and what of it goes back by credit notes. What is left is counted, not marked.
 *
 * @param billed as the invoice has it
 * @param given what earlier credit notes gave back of it
 */
public record LineCredit(InvoiceLine billed, List<InvoiceLine> given) {

    public LineCredit {
        given = List.copyOf(given);
    }

    /** What can still go back, before tax. */
    public MonetaryAmount left() {
        return given.stream().map(InvoiceLine::net).reduce(billed.net(), MonetaryAmount::subtract);
    }

    /** Whether all of it went back; a line for nothing is given back once. */
    public boolean isSpent() {
        return !given.isEmpty() && left().isZero();
    }

    /** All that is left: the line itself where nothing went back. */
    public InvoiceLine rest() {
        Figure whole = Figure.price(billed.net(), "");
        Figure rest = given.stream().map(note -> Figure.price(note.net(), "")).reduce(whole, Figure::minus);
        return given.isEmpty() ? billed : line(Explanation.of(rest, Phrase.of("reason.line-rest")));
    }

    /**
     * A part of it. Each part bears its share of the document discount, so that all parts together bear the line's.
     *
     * @param amount before tax, positive and at most {@link #left}
     */
    public InvoiceLine part(MonetaryAmount amount) {
        Check.that(amount.isPositive() && amount.isLessThanOrEqualTo(left()), "only " + left() + " is left");
        return line(Explanation.of(Figure.price(amount, ""),
                Phrase.of("reason.line-part", new Fact.Amount(billed.net()))));
    }

    private InvoiceLine line(Explanation how) {
        MonetaryAmount net = how.amount(billed.net().getCurrency());
        Optional<UnitPrice> none = Optional.empty();
        return new InvoiceLine(billed.chargeClass(), billed.outcome(), billed.text(), billed.machine(),
                Quantity.of(1, Unit.EACH), none, net, Amounts.zero(net.getCurrency()), net, how, tax(net));
    }

    private LineTax tax(MonetaryAmount net) {
        Explanation base = new Explanation(base(net), billed.tax().how().reasons());
        return new LineTax(base.amount(net.getCurrency()), base, billed.tax().rate(), billed.tax().why());
    }

    /** The shares are rounded on what went back up to and with this part, so the last one completes the line's. */
    private Figure base(MonetaryAmount net) {
        MonetaryAmount share = billed.net().subtract(billed.tax().base());
        if (share.isZero()) {
            return Figure.price(net, "");
        }
        MonetaryAmount upTo = billed.net().subtract(left()).add(net);
        Figure shares = Figure.price(share, "").times(Figure.price(upTo, "")).over(Figure.price(billed.net(), ""))
                .rounded(Rounding.ALLOWANCE, net.getCurrency());
        return given.stream().map(note -> note.net().subtract(note.tax().base()))
                .map(before -> Figure.price(before, ""))
                .reduce(Figure.price(net, "").minus(shares), Figure::plus);
    }
}
