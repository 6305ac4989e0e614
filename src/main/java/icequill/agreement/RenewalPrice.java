package icequill.agreement;

import icequill.explain.Explanation;
import icequill.explain.Fact;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Percent;
import icequill.money.Stepping;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What an agreement costs after its renewal.
 *
 * @param how the new price was figured, and why
 */
public record RenewalPrice(MonetaryAmount old, MonetaryAmount price, Explanation how) {

    /**
     * The raised price, rounded to the nearest full step; where that is above the cap, the highest full step that is not; where
     * even that is below the old price, the old price stays, since the cap is no reason to lower it.
     *
     * @param old in whole minor units, not negative
     * @param step above zero, in whole minor units
     * @param cap the most the price may rise by, from 0
     */
    public static RenewalPrice of(MonetaryAmount old, Raise raise, MonetaryAmount step, Percent cap) {
        CurrencyUnit currency = old.getCurrency();
        Explanation raised = Explanation.of(raise.of(old).stepped(Stepping.NEAREST, step), raise.why(), toStep(step));
        Figure most = Figure.price(old, "").times(Figure.percent(Percent.HUNDRED).plus(Figure.percent(cap)));
        if (raised.figure().exact().compareTo(most.exact()) <= 0) {
            return new RenewalPrice(old, raised.amount(currency), raised);
        }
        Explanation capped = new Explanation(most.stepped(Stepping.DOWN, step), raised.reasons())
                .because(Phrase.of("reason.renewal-cap", new Fact.Amount(raised.amount(currency)), new Fact.Part(cap)));
        if (capped.amount(currency).isGreaterThanOrEqualTo(old)) {
            return new RenewalPrice(old, capped.amount(currency), capped);
        }
        Explanation kept = new Explanation(Figure.price(old, ""), capped.reasons())
                .because(Phrase.of("reason.renewal-kept"));
        return new RenewalPrice(old, old, kept);
    }

    /** The old price going on as it is. */
    public static RenewalPrice unchanged(MonetaryAmount old) {
        return new RenewalPrice(old, old,
                Explanation.of(Figure.price(old, ""), Phrase.of("reason.renewal-unchanged")));
    }

    /** New less old; negative when the price falls. */
    public MonetaryAmount difference() {
        return price.subtract(old);
    }

    /** That a price is rounded to a step. */
    private static Phrase toStep(MonetaryAmount step) {
        return Phrase.of("reason.price-step", new Fact.Amount(step));
    }
}
