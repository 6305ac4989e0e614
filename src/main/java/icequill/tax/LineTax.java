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
 */
public record LineTax(MonetaryAmount base, Explanation how, Optional<TaxRate> rate, Phrase why) {

    public boolean isTaxed() {
        return rate.map(found -> found.category().isTaxed()).orElse(false);
    }
}
