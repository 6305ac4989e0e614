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
 * The tax at one rate that goes back with the credits of an invoice, at the rate of the original, or that is asked for in parts.
 * What each earlier paper says itself is what went before, so that the last one ends every authority's tax at zero.
 *
 * @param notes what earlier papers gave back, or asked for, at this rate
 * @param told the beginning of what is said of it: {@code credit} or {@code stage}
 */
public record TaxCredit(TaxTotal original, List<TaxTotal> notes, String told) {

    /** Of credits. */
    public TaxCredit(TaxTotal original, List<TaxTotal> notes) {
        this(original, notes, "credit");
    }

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
     * @param parts of the lines that are credited, such that it {@link #allows} their sum
     */
    public TaxTotal further(List<TaxedPart> parts, TaxBasis basis) {
        CurrencyUnit currency = original.base().getCurrency();
        MonetaryAmount amount = Amounts.sum(parts.stream().map(TaxedPart::base).toList(), currency);
        MonetaryAmount left = left();
        Check.that(allows(amount), "only " + left + " is left, not " + amount);
        TaxTotal byRate = TaxTotals.total(original.rate(), amount, parts,
                TaxTotals.explained(original.rate(), parts, basis).because(Phrase.of("reason." + told + "-rate")));
        boolean isLast = amount.isEqualTo(left);
        boolean isWhole = isLast && notes.isEmpty() && amount.isNegative();
        if (isWhole || (!isLast && fits(byRate))) {
            return byRate;
        }
        Explanation how = isLast || !isWithin(byRate.tax(), taxLeft()) ? rest() : byRate.how();
        MonetaryAmount tax = how.amount(currency);
        return new TaxTotal(original.rate(), amount, tax, how, components(tax, isLast ? bases() : bases(byRate)));
    }

    /** What is left of the base; negative where more was taken back than charged. */
    public MonetaryAmount left() {
        return original.base()
                .subtract(Amounts.sum(notes.stream().map(TaxTotal::base).toList(), original.base().getCurrency()));
    }

    /** Whether so much can go back: no more than is left; where more was taken back than charged, no more of that. */
    public boolean allows(MonetaryAmount amount) {
        return amount.isZero() || isWithin(amount, left());
    }

    private static boolean isWithin(MonetaryAmount part, MonetaryAmount left) {
        return part.isZero() || (part.signum() == left.signum() && !part.abs().isGreaterThan(left.abs()));
    }

    private boolean fits(TaxTotal share) {
        List<MonetaryAmount> left = componentsLeft();
        return IntStream.range(0, left.size())
                .allMatch(i -> isWithin(share.components().get(i).amount(), left.get(i)));
    }

    /** What tax is left; nothing where more than there was went back already. */
    private Explanation rest() {
        Figure whole = Figure.price(original.tax(), "");
        Figure left = taxLeft().signum() == -original.base().signum()
                ? Figure.price(Amounts.zero(original.base().getCurrency()), "")
                : notes.stream().map(note -> Figure.price(note.tax(), "")).reduce(whole, Figure::minus);
        return Explanation.of(left, Phrase.of("reason." + told + "-rest"));
    }

    /** The tax divided by what is left to each authority, so that nobody gives back more. */
    private List<ComponentTax> components(MonetaryAmount tax, List<Optional<MonetaryAmount>> bases) {
        CurrencyUnit currency = tax.getCurrency();
        List<BigDecimal> weights = componentsLeft().stream()
                .map(left -> left.signum() == tax.signum() ? Amounts.number(left).abs() : BigDecimal.ZERO).toList();
        boolean isNothing = weights.stream().allMatch(weight -> weight.signum() == 0);
        return IntStream.range(0, weights.size()).mapToObj(i -> {
            Figure part = isNothing
                    ? Figure.price(Amounts.zero(currency), "")
                    : new Figure.Share(new BigDecimal(Amounts.plain(tax)), weights, i, Rounding.TAX.decimals(currency));
            Explanation how = Explanation.of(part, Phrase.of("reason." + told + "-left"));
            return new ComponentTax(original.rate().components().get(i), how.amount(currency), how,
                    bases.get(i));
        }).toList();
    }

    private static List<Optional<MonetaryAmount>> bases(TaxTotal total) {
        return total.components().stream().map(ComponentTax::base).toList();
    }

    /** What is left of what each authority taxed, where it did not tax all. */
    private List<Optional<MonetaryAmount>> bases() {
        return IntStream.range(0, original.components().size()).mapToObj(i -> original.components().get(i).base()
                .map(whole -> notes.stream().map(note -> note.components().get(i).base().orElse(note.base()))
                        .reduce(whole, MonetaryAmount::subtract)))
                .toList();
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
