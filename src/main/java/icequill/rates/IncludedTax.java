package icequill.rates;

import icequill.money.Percent;
import icequill.work.ChargeClass;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The tax that is in prices, where a place's prices are shown with it.
 *
 * @param byClass of those classes that are taxed
 * @param ifFurnished those of them that are taxed only where something is furnished on the visit
 * @param byLine whether each line is rounded by itself; else all lines of one rate together
 */
public record IncludedTax(Map<ChargeClass, Part> byClass, Set<ChargeClass> ifFurnished, boolean byLine) {

    /** All of a rate, by its id. */
    public record Part(String rate, Percent percent) {}

    public IncludedTax {
        byClass = Map.copyOf(byClass);
        ifFurnished = Set.copyOf(ifFurnished);
    }

    /**
     * What is in the price of a class; empty where it is not taxed.
     *
     * @param furnished whether something is furnished on the visit
     */
    public Optional<Part> of(ChargeClass chargeClass, boolean furnished) {
        return Optional.ofNullable(byClass.get(chargeClass))
                .filter(part -> furnished || !ifFurnished.contains(chargeClass));
    }
}
