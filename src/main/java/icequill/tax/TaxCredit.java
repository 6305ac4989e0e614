package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.money.Rounding;
import icequill.problem.Check;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * The tax that goes back with a credit, at the rate of the original.
 *
 * @param base credited so far of the original's base
 * @param tax credited so far
 */
public record TaxCredit(TaxTotal original, MonetaryAmount base, MonetaryAmount tax) {

    /** Nothing credited yet. */
    public static TaxCredit none(TaxTotal original) {
        CurrencyUnit currency = original.base().getCurrency();
        MonetaryAmount zero = Amounts.zero(currency);
        return new TaxCredit(original, zero, zero);
    }

    /**
     * The tax on a further credit; the credit that completes the base takes what tax is left.
     *
     * @param amount positive, at most what is left of the base
     */
    public Explanation taxOn(MonetaryAmount amount) {
        MonetaryAmount left = original.base().subtract(base);
        Check.that(amount.isPositive() && amount.isLessThanOrEqualTo(left), "only " + left + " is left, not " + amount);
        MonetaryAmount taxLeft = original.tax().subtract(tax);
        if (amount.isEqualTo(left)) {
            return Explanation.of(Figure.price(original.tax(), "").minus(Figure.price(tax, "")),
                    Phrase.of("reason.credit-rest"));
        }
        CurrencyUnit currency = amount.getCurrency();
        Explanation share = Explanation.of(Figure.percent(original.rate().total()).times(Figure.price(amount, ""))
                .rounded(Rounding.TAX, currency), Phrase.of("reason.credit-rate"));
        return share.amount(currency).isGreaterThan(taxLeft)
                ? Explanation.of(Figure.price(taxLeft, ""), Phrase.of("reason.credit-rest"))
                : share;
    }

    /** The tax that goes back on a further credit, as a total of its own. */
    public TaxTotal totalOn(MonetaryAmount amount) {
        Explanation how = taxOn(amount);
        return TaxTotals.total(original.rate(), amount, how);
    }

    /** The state after crediting the amount. */
    public TaxCredit after(MonetaryAmount amount) {
        return new TaxCredit(original, base.add(amount), tax.add(taxOn(amount).amount(amount.getCurrency())));
    }
}
