package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.party.TaxBasis;
import icequill.problem.Check;
import icequill.tax.TaxTotal.ComponentTax;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The tax at one rate that goes back with the credits of an invoice, at the rate of the original. What each earlier credit note
 * says itself is what went back, so that the last one ends every authority's tax at zero.
 *
 * @param notes what earlier credit notes gave back at this rate
 */
public record TaxCredit(TaxTotal original, List<TaxTotal> notes) {

    public TaxCredit {
        notes = List.copyOf(notes);
        CurrencyUnit currency = original.base().getCurrency();
        Check.that(notes.stream().allMatch(note -> note.rate().equals(original.rate())
                && note.base().getCurrency().equals(currency)), "not of rate " + original.rate().id());
    }

    /**
     * What goes back with a further credit. The one that completes the base takes what tax is left, and none takes more; up to
     * then each is rounded by the invoice's own basis, and each authority gives its share by the rates, as far as it has it.
     *
     * @param bases of the lines that are credited, such that it {@link #allows} their sum
     */
    public TaxTotal further(List<MonetaryAmount> bases, TaxBasis basis) {
        CurrencyUnit currency = original.base().getCurrency();
        MonetaryAmount amount = Amounts.sum(bases, currency);
        MonetaryAmount left = left();
        Check.that(allows(amount), "only " + left + " is left, not " + amount);
        TaxTotal byRate = TaxTotals.total(original.rate(), amount, bases,
                byRate(bases, amount, basis).because(Phrase.of("reason.credit-rate")));
        boolean isLast = amount.isEqualTo(left);
        boolean isWholeLine = isWhole(amount) && !original.rate().isCapped();
        if (isWholeLine || (!isLast && !original.rate().isCapped() && fits(byRate))) {
            return byRate;
        }
        Explanation how = isLast || byRate.tax().isGreaterThan(taxLeft()) ? rest() : byRate.how();
        MonetaryAmount tax = how.amount(currency);
        return new TaxTotal(original.rate(), amount, tax, how, components(tax, amount));
    }

    /** Of what was taxed in part only a part has as much of the tax as of the base. */
    private Explanation byRate(List<MonetaryAmount> bases, MonetaryAmount amount, TaxBasis basis) {
        return original.rate().isCapped() && !original.base().isZero()
                ? Explanation.of(Figure.price(original.tax(), "").times(Figure.price(amount, ""))
                        .over(Figure.price(original.base(), ""))
                        .rounded(Rounding.TAX, original.base().getCurrency()))
                : TaxTotals.explained(original.rate(), bases, basis);
    }

    /** What is left of the base; negative where more was taken back than charged. */
    public MonetaryAmount left() {
        return original.base()
                .subtract(Amounts.sum(notes.stream().map(TaxTotal::base).toList(), original.base().getCurrency()));
    }

    /** Whether so much can go back: no more than is left; what was taken back goes back as a whole or with what was charged. */
    public boolean allows(MonetaryAmount amount) {
        MonetaryAmount left = left();
        return amount.isZero() || amount.isEqualTo(left)
                || (amount.isPositive() && amount.isLessThanOrEqualTo(left));
    }

    private boolean isWhole(MonetaryAmount amount) {
        return notes.isEmpty() && amount.isNegative();
    }

    private boolean fits(TaxTotal share) {
        List<MonetaryAmount> left = componentsLeft();
        return IntStream.range(0, left.size())
                .allMatch(i -> share.components().get(i).amount().isLessThanOrEqualTo(left.get(i)));
    }

    /** What tax is left; nothing where more than there was went back already. */
    private Explanation rest() {
        Figure whole = Figure.price(original.tax(), "");
        Figure left = taxLeft().isNegative()
                ? Figure.price(Amounts.zero(original.base().getCurrency()), "")
                : notes.stream().map(note -> Figure.price(note.tax(), "")).reduce(whole, Figure::minus);
        return Explanation.of(left, Phrase.of("reason.credit-rest"));
    }

    /** The tax divided by what is left to each authority, so that nobody gives back more. */
    private List<ComponentTax> components(MonetaryAmount tax, MonetaryAmount amount) {
        CurrencyUnit currency = tax.getCurrency();
        List<BigDecimal> weights = componentsLeft().stream().map(left -> Amounts.number(left).max(BigDecimal.ZERO))
                .toList();
        boolean isNothing = weights.stream().allMatch(weight -> weight.signum() == 0);
        return IntStream.range(0, weights.size()).mapToObj(i -> {
            Figure part = isNothing
                    ? Figure.price(Amounts.zero(currency), "")
                    : new Figure.Share(new BigDecimal(Amounts.plain(tax)), weights, i, Rounding.TAX.decimals(currency));
            Explanation how = Explanation.of(part, Phrase.of("reason.credit-left"));
            return new ComponentTax(original.rate().components().get(i), how.amount(currency), how,
                    base(i, amount));
        }).toList();
    }

    /** What an authority taxed of what is credited, where it did not tax all: a part as large, and at last what is left. */
    private Optional<MonetaryAmount> base(int component, MonetaryAmount amount) {
        CurrencyUnit currency = original.base().getCurrency();
        return original.components().get(component).base().map(whole -> amount.isEqualTo(left())
                ? notes.stream().map(note -> note.components().get(component).base().orElse(note.base()))
                        .reduce(whole, MonetaryAmount::subtract)
                : Explanation.of(Figure.price(whole, "").times(Figure.price(amount, ""))
                        .over(Figure.price(original.base(), "")).rounded(Rounding.TAX, currency)).amount(currency));
    }

    private MonetaryAmount taxLeft() {
        return Amounts.sum(componentsLeft(), original.base().getCurrency());
    }

    /** Of each authority's tax, in the order of the rate. */
    private List<MonetaryAmount> componentsLeft() {
        return IntStream.range(0, original.components().size()).mapToObj(i -> notes.stream()
                .map(note -> note.components().get(i).amount())
                .reduce(original.components().get(i).amount(), MonetaryAmount::subtract)).toList();
    }
}
