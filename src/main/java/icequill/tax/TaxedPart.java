package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.tax.TaxTotal.ComponentTax;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What is taxed of one line: all of it, or the part that a credit note gives back; or of all lines of one rate together.
 *
 * @param base of the part
 * @param whole the base of the line on its invoice
 * @param before what earlier credit notes gave back of it
 * @param together what each authority taxes of several lines together, since a cap is one of each line; empty of one line
 */
public record TaxedPart(MonetaryAmount base, MonetaryAmount whole, MonetaryAmount before,
        List<ComponentTax> together) {

    public TaxedPart {
        together = List.copyOf(together);
    }

    /** Of one line. */
    public TaxedPart(MonetaryAmount base, MonetaryAmount whole, MonetaryAmount before) {
        this(base, whole, before, List.of());
    }

    /** Of all that is taxed at a rate. */
    static TaxedPart of(TaxTotal total, MonetaryAmount base, MonetaryAmount before) {
        return new TaxedPart(base, total.base(), before, total.components());
    }

    static TaxedPart all(MonetaryAmount base) {
        return new TaxedPart(base, base, base.subtract(base));
    }

    /** What a component taxes: where it taxes only so much of the line, as large a part of that; all parts together have all of it. */
    MonetaryAmount by(TaxRate.Component component) {
        MonetaryAmount taxed = together.stream().filter(part -> part.component().equals(component)).findFirst()
                .map(part -> part.base().orElse(whole)).orElseGet(() -> component.taxed(whole));
        return taxed.isEqualTo(whole)
                ? base
                : share(taxed, before.add(base)).subtract(share(taxed, before));
    }

    private MonetaryAmount share(MonetaryAmount taxed, MonetaryAmount upTo) {
        return Explanation.of(Figure.price(taxed, "").times(Figure.price(upTo, "")).over(Figure.price(whole, ""))
                .rounded(Rounding.TAX, whole.getCurrency())).amount(whole.getCurrency());
    }
}
