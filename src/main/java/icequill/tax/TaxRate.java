package icequill.tax;

import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Rounding;
import icequill.party.Wording;
import icequill.problem.Check;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A rate of tax, the sum of its components.
 *
 * @param components state, county, city, district; one for VAT; none for a category without tax
 * @param reason why no tax is due, for the categories that must say so
 */
public record TaxRate(String id, Category category, List<Component> components, Optional<Wording> reason) {

    /**
     * Part of a rate that one authority levies.
     *
     * @param cap of what one line costs it taxes so much at most, as Florida's counties do with the first 5,000 of an item (F.S.
     *     212.054(2)(b), from memory); empty where it taxes all
     * @param share of what one line costs that is taxed, where a certificate frees the rest; empty where it frees none
     */
    public record Component(Wording name, Percent percent, Levy levy, Optional<MonetaryAmount> cap,
            Optional<Percent> share) {

        /** What it taxes of a line; of one that takes something back so much at most, too. */
        MonetaryAmount taxed(MonetaryAmount base) {
            if (base.isNegative()) {
                return taxed(base.negate()).negate();
            }
            MonetaryAmount part = share.map(percent -> Explanation.of(Figure.percent(percent)
                    .times(Figure.price(base, "")).rounded(Rounding.TAX, base.getCurrency()))
                    .amount(base.getCurrency())).orElse(base);
            return cap.filter(part::isGreaterThan).orElse(part);
        }

        /** Whether it may tax less of a line than all of it. */
        boolean isPartial() {
            return cap.isPresent() || share.isPresent();
        }

        Component of(Wording place) {
            return new Component(place.and(name), percent, levy, cap, share);
        }

        private Component onShare(Percent taxed) {
            return new Component(name, percent, levy, cap, Optional.of(taxed));
        }
    }

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
        /** The customer owes the tax (reverse charge). */
        AE,
        /** Goods sent to a business in another state of the EU, which owes the tax on what it acquires. */
        K,
        /** Goods sent out of the EU. */
        G,
        /** Outside the scope of the tax. */
        O;

        public boolean isTaxed() {
            return this == S;
        }

        /** Whether the customer owes the tax, so that his VAT identifier belongs on the paper (2006/112/EC Art. 226(4)). */
        public boolean isOwedByCustomer() {
            return this == AE || this == K;
        }
    }

    public TaxRate {
        components = List.copyOf(components);
        Check.that(category.isTaxed() != components.isEmpty(), "category " + category + " with " + components);
    }

    /**
     * Why nothing is charged, as a paper says it: the reason that was given, or the category in words. A reverse charge is always
     * called so, because the law wants the words (2006/112/EC Art. 226(11a)).
     */
    public Phrase untaxed() {
        Phrase category = Phrase.of("tax.category." + ConstantKey.of(this.category));
        Optional<Fact> given = reason.map(text -> text.named());
        return this.category == Category.AE
                ? given.map(text -> Phrase.of("tax.category.ae-by", text)).orElse(category)
                : given.map(text -> Phrase.of("tax.reason", text)).orElse(category);
    }

    /** Whether an authority may tax less of a line than all of it. */
    public boolean isPartial() {
        return components.stream().anyMatch(Component::isPartial);
    }

    /** The same on a part of what each line costs: another than the whole rate. */
    TaxRate onShare(Percent taxed) {
        return new TaxRate(id + "/" + taxed.value().toPlainString(), category,
                components.stream().map(component -> component.onShare(taxed)).toList(), reason);
    }

    /** The same under the name of its place: another than an equal rate elsewhere. */
    TaxRate of(String place, Wording name) {
        return new TaxRate(place + "/" + id, category,
                components.stream().map(component -> component.of(name)).toList(), reason);
    }

    public Percent total() {
        return components.stream().map(Component::percent).reduce(Percent.ZERO, Percent::plus);
    }
}
