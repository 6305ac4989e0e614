package icequill.tax;

import icequill.party.TaxBasis;
import icequill.party.Wording;
import icequill.problem.Check;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import java.util.Map;
import java.util.Objects;

/**
 * The tax rules of one place.
 *
 * @param regime sales tax or VAT
 * @param state the region code that exemption certificates name
 * @param rules for every class
 */
public record TaxPlace(String id, Wording name, Regime regime, String state, Map<ChargeClass, Rule> rules,
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

    /** The basis that tax is figured by here; VAT is always figured by invoice. */
    public TaxBasis basis(TaxBasis shops) {
        return regime == Regime.VAT ? TaxBasis.INVOICE : shops;
    }

    /** A rate of this place under its name. */
    TaxRate named(TaxRate rate) {
        return rate.of(id, name);
    }

    Rule rule(ChargeClass chargeClass) {
        return Objects.requireNonNull(rules.get(chargeClass));
    }
}
