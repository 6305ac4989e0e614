package icequill.tax;

import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.problem.Check;
import icequill.problem.Place;
import icequill.rates.IncludedTax;
import icequill.rates.Rates;
import icequill.work.ChargeClass;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The tax rules of one place.
 *
 * @param regime sales tax or VAT
 * @param state the region code that exemption certificates name
 * @param rules for every class
 * @param ownAdvances when deposits and what is held back are taxed; empty where it is as usual for the kind of tax
 * @param earlyPaymentReducesTax whether tax is due only on what who pays early pays; it is not where nothing is said
 * @param pricesIncludeTax whether the shop's prices are shown with the tax of this place; they are not where nothing is said
 * @param reliefs how far certificates free of tax; empty where each frees of all of it
 * @param ownBlocks when what is sold ahead is taxed; when it is sold where nothing is said
 */
public record TaxPlace(String id, Wording name, Regime regime, String state, Map<ChargeClass, Rule> rules,
        Optional<Advances> ownAdvances, Optional<Boolean> earlyPaymentReducesTax,
        Optional<Boolean> pricesIncludeTax, Optional<Reliefs> reliefs, Optional<BlockTax> ownBlocks,
        Place place) {

    /** The two kinds of tax on sales. */
    public enum Regime {
        SALES_TAX, VAT
    }

    /** How a class is taxed, and at which rate if it is. */
    public record Rule(Taxability taxability, TaxRate rate) {}

    public TaxPlace {
        rules = Map.copyOf(rules);
        Check.that(rules.size() == ChargeClass.values().length, "not a rule for every class: " + rules.keySet());
    }

    public Advances advances() {
        return ownAdvances.orElseGet(() -> usual(regime));
    }

    /** When what is sold ahead is taxed here. */
    public BlockTax blocks() {
        return ownBlocks.orElse(BlockTax.AT_SALE);
    }

    public static Advances usual(Regime regime) {
        return switch (regime) {
        case VAT -> Advances.USUAL_OF_VAT;
        case SALES_TAX -> Advances.USUAL_OF_SALES_TAX;
        };
    }

    /** The basis that tax is figured by here; VAT is always figured by invoice. */
    public TaxBasis basis(TaxBasis shops) {
        return regime == Regime.VAT ? TaxBasis.INVOICE : shops;
    }

    /** Prices as they are shown here: with their tax, where the place has it so. */
    public Rates shown(Rates rates, TaxBasis shops) {
        return pricesIncludeTax.orElse(false) ? rates.including(included(basis(shops))) : rates;
    }

    private IncludedTax included(TaxBasis basis) {
        Map<ChargeClass, IncludedTax.Part> byClass = new EnumMap<>(ChargeClass.class);
        Set<ChargeClass> ifFurnished = EnumSet.noneOf(ChargeClass.class);
        rules.forEach((chargeClass, rule) -> {
            if (rule.taxability() == Taxability.TAXABLE || rule.taxability() == Taxability.TAXABLE_IF_PARTS_ON_VISIT) {
                byClass.put(chargeClass, new IncludedTax.Part(rule.rate().id(), rule.rate().total()));
            }
            if (rule.taxability() == Taxability.TAXABLE_IF_PARTS_ON_VISIT) {
                ifFurnished.add(chargeClass);
            }
        });
        return new IncludedTax(byClass, ifFurnished, basis == TaxBasis.ITEM);
    }

    /** A rate of this place under its name. */
    TaxRate named(TaxRate rate) {
        return rate.of(id, name);
    }

    Rule rule(ChargeClass chargeClass) {
        return Objects.requireNonNull(rules.get(chargeClass));
    }
}
