package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.pricer.UnitPrice;
import icequill.problem.Check;
import icequill.tax.LineTax;
import icequill.tax.TaxedPart;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
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

    /** The same less what is left of its share of the document discount. */
    public MonetaryAmount baseLeft() {
        return given.stream().map(note -> note.tax().base()).reduce(billed.tax().base(), MonetaryAmount::subtract);
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
     * @param amount that goes back before tax, after that share; positive and at most {@link #baseLeft}
     */
    public InvoiceLine part(MonetaryAmount amount) {
        Check.that(amount.isPositive() && amount.isLessThanOrEqualTo(baseLeft()), "only " + baseLeft() + " is left");
        return ofBase(Figure.price(amount, ""), Phrase.of("reason.line-part", new Fact.Amount(billed.net())));
    }

    /**
     * A share of an amount that goes back of several lines, such as goodwill on the whole of an invoice.
     *
     * @param whole what goes back of all of them, after the document discount
     * @param left what is left of each, after it
     * @param index of this one among them
     */
    public InvoiceLine share(MonetaryAmount whole, List<MonetaryAmount> left, int index) {
        return ofBase(new Figure.Share(new BigDecimal(Amounts.plain(whole)),
                left.stream().map(Amounts::number).toList(), index, whole.getCurrency().getDefaultFractionDigits()),
                Phrase.of("reason.line-share"));
    }

    /** A percentage of what it was billed at; it may be more than is left. */
    public InvoiceLine part(Percent percent) {
        return line(Explanation.of(Figure.percent(percent).times(Figure.price(billed.net(), ""))
                .rounded(Rounding.ALLOWANCE, billed.net().getCurrency())));
    }

    /** How many can still go back: empty where the line has no price for one. */
    public Optional<Quantity> countLeft() {
        return billed.unitPrice().map(price -> new Quantity(
                billed.quantity().number().subtract(countGiven()), billed.quantity().unit()));
    }

    /**
     * So many of it. Each is rounded on all that went back by number up to and with it, so that the last one completes the line;
     * it may be more than is left where other parts went back too.
     *
     * @param number above zero and at most {@link #countLeft}
     */
    public InvoiceLine count(BigDecimal number) {
        CurrencyUnit currency = billed.net().getCurrency();
        Quantity part = new Quantity(number, billed.quantity().unit());
        Explanation how = Explanation.of(counted(billed.net(), part, counted().map(InvoiceLine::net).toList()));
        MonetaryAmount list = Explanation
                .of(counted(billed.list(), part, counted().map(InvoiceLine::list).toList())).amount(currency);
        MonetaryAmount net = how.amount(currency);
        return new InvoiceLine(billed.chargeClass(), billed.outcome(), billed.text(), billed.machine(), part,
                billed.unitPrice(), list, list.subtract(net), net, how, tax(net));
    }

    private Figure counted(MonetaryAmount whole, Quantity part, List<MonetaryAmount> before) {
        String unit = part.unit().symbol();
        Figure upTo = Figure.term(Exact.normal(countGiven().add(part.number())), unit);
        Figure all = Figure.price(whole, "").times(upTo).over(Figure.term(billed.quantity().number(), unit))
                .rounded(Rounding.LINE, whole.getCurrency());
        return before.stream().map(one -> Figure.price(one, "")).reduce(all, Figure::minus);
    }

    private BigDecimal countGiven() {
        return counted().map(line -> line.quantity().number()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What went back by number: other parts have no price for one. */
    private Stream<InvoiceLine> counted() {
        return given.stream().filter(line -> line.unitPrice().isPresent());
    }

    /** What is taxed of a part of it. */
    public TaxedPart taxed(InvoiceLine part) {
        MonetaryAmount before = Amounts.sum(given.stream().map(note -> note.tax().base()).toList(),
                billed.net().getCurrency());
        return new TaxedPart(part.tax().base(), billed.tax().base(), before);
    }

    private InvoiceLine line(Explanation how) {
        return line(how, tax(how.amount(billed.net().getCurrency())));
    }

    private InvoiceLine line(Explanation how, LineTax tax) {
        MonetaryAmount net = how.amount(billed.net().getCurrency());
        Optional<UnitPrice> none = Optional.empty();
        return new InvoiceLine(billed.chargeClass(), billed.outcome(), billed.text(), billed.machine(),
                Quantity.of(1, Unit.EACH), none, net, Amounts.zero(net.getCurrency()), net, how, tax);
    }

    /** The line of which so much is left after the document discount; as much comes on top as that takes off. */
    private InvoiceLine ofBase(Figure base, Phrase reason) {
        MonetaryAmount amount = Explanation.of(base).amount(billed.net().getCurrency());
        Explanation bare = Explanation.of(base, reason);
        Explanation how = discountOn(amount)
                .map(off -> Explanation.of(base.plus(off), reason, Phrase.of("reason.line-discount")))
                .orElse(bare);
        return line(how, tax(base));
    }

    /** The shares are rounded on what went back up to and with this part; empty where it bears none. */
    private Optional<Figure> discountOn(MonetaryAmount base) {
        MonetaryAmount whole = billed.tax().base();
        MonetaryAmount share = billed.net().subtract(whole);
        if (share.isZero()) {
            return Optional.empty();
        }
        MonetaryAmount upTo = whole.subtract(baseLeft()).add(base);
        Figure all = Figure.price(share, "").times(Figure.price(upTo, "")).over(Figure.price(whole, ""))
                .rounded(Rounding.ALLOWANCE, base.getCurrency());
        Figure own = given.stream().map(note -> note.net().subtract(note.tax().base()))
                .map(before -> Figure.price(before, "")).reduce(all, Figure::minus);
        return Optional.of(own).filter(off -> off.exact().signum() > 0);
    }

    private LineTax tax(MonetaryAmount net) {
        return tax(base(net));
    }

    private LineTax tax(Figure figure) {
        Explanation base = new Explanation(figure, billed.tax().how().reasons());
        return new LineTax(base.amount(billed.net().getCurrency()), base, billed.tax().rate(), billed.tax().why());
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
