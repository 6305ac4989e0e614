package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Rounding;
import javax.money.MonetaryAmount;

/**
 * What is taxed of one line: all of it, or the part that a credit note gives back.
 *
 * @param base of the part
 * @param whole the base of the line on its invoice
 * @param before what earlier credit notes gave back of it
 */
public record TaxedPart(MonetaryAmount base, MonetaryAmount whole, MonetaryAmount before) {

    static TaxedPart all(MonetaryAmount base) {
        return new TaxedPart(base, base, base.subtract(base));
    }

    /** What a component taxes: where it taxes only so much of the line, as large a part of that; all parts together have all of it. */
    MonetaryAmount by(TaxRate.Component component) {
        MonetaryAmount taxed = component.taxed(whole);
        return taxed.isEqualTo(whole)
                ? base
                : share(taxed, before.add(base)).subtract(share(taxed, before));
    }

    private MonetaryAmount share(MonetaryAmount taxed, MonetaryAmount upTo) {
        return Explanation.of(Figure.price(taxed, "").times(Figure.price(upTo, "")).over(Figure.price(whole, ""))
                .rounded(Rounding.TAX, whole.getCurrency())).amount(whole.getCurrency());
    }
}
