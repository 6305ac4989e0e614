package icequill.tax;

import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * An amount and the rate that applies to it.
 *
 * @param shown the amount with its tax, where it was shown so; the tax is the difference then
 */
public record Taxable(TaxRate rate, MonetaryAmount base, Optional<MonetaryAmount> shown) {

    /** An amount that was shown before tax. */
    public Taxable(TaxRate rate, MonetaryAmount base) {
        this(rate, base, Optional.empty());
    }
}
