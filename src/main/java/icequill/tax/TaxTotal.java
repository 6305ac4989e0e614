package icequill.tax;

import icequill.explain.Explanation;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The tax at one rate.
 *
 * @param base what is taxed at the rate
 * @param components of the rate, which add up to the tax; empty where none is due
 */
public record TaxTotal(TaxRate rate, MonetaryAmount base, MonetaryAmount tax, Explanation how,
        List<ComponentTax> components) {

    /**
     * What one authority gets.
     *
     * @param base what it taxes, where that is less than the total's
     */
    public record ComponentTax(TaxRate.Component component, MonetaryAmount amount, Explanation how,
            Optional<MonetaryAmount> base) {}

    public TaxTotal {
        components = List.copyOf(components);
    }

    TaxTotal at(TaxPlace place) {
        return new TaxTotal(place.named(rate), base, tax, how, components.stream()
                .map(part -> new ComponentTax(part.component().of(place.name()), part.amount(), part.how(),
                        part.base()))
                .toList());
    }
}
