package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * How one line is taxed.
 *
 * @param base net less the line's share of the document discount
 * @param rate empty when no tax of any category applies to it
 * @param why the rule that decided
 * @param shown what the base was shown at with its tax; empty where prices are shown before tax
 */
public record LineTax(MonetaryAmount base, Explanation how, Optional<TaxRate> rate, Phrase why,
        Optional<MonetaryAmount> shown) {

    /** Of a price that is shown before tax. */
    public LineTax(MonetaryAmount base, Explanation how, Optional<TaxRate> rate, Phrase why) {
        this(base, how, rate, why, Optional.empty());
    }

    Optional<Taxable> taxable() {
        return rate.map(found -> new Taxable(found, base, shown));
    }

    public boolean isTaxed() {
        return rate.map(found -> found.category().isTaxed()).orElse(false);
    }
}
