package icequill.tax;

import icequill.money.Percent;
import icequill.party.Wording;
import icequill.problem.Check;
import java.util.List;
import java.util.Optional;

/**
 * A rate of tax, the sum of its components.
 *
 * @param components state, county, city, district; one for VAT; none for a category without tax
 * @param reason why no tax is due, for the categories that must say so
 */
public record TaxRate(String id, Category category, List<Component> components, Optional<Wording> reason) {

    /** Part of a rate that one authority levies. */
    public record Component(Wording name, Percent percent, Levy levy) {}

    /** Whose a part of a rate is; electronic invoices tell the two parts of US sales taxes apart. */
    public enum Levy {
        NATION, STATE, LOCAL
    }

    /** The tax categories of UN/CEFACT list 5305 that the program uses. */
    public enum Category {
        /** Standard: taxed at a rate. */
        S,
        /** Zero rated. */
        Z,
        /** Exempt. */
        E,
        /** Outside the scope of the tax. */
        O;

        public boolean isTaxed() {
            return this == S;
        }
    }

    public TaxRate {
        components = List.copyOf(components);
        Check.that(category.isTaxed() != components.isEmpty(), "category " + category + " with " + components);
    }

    public Percent total() {
        return components.stream().map(Component::percent).reduce(Percent.ZERO, Percent::plus);
    }
}
