package icequill.forecast.effects;

import icequill.explain.Figure;
import icequill.money.Rounding;
import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import icequill.problem.Problems;
import icequill.problem.Validated;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * What it costs a year when machines must be replaced earlier. How long a machine lives is the owner's figure: published lives differ
 * from 7 to 12 years, and nobody has measured what cleaning adds.
 *
 * @param price of a new machine, set up
 * @param shorter years that a neglected machine lives
 * @param longer years that one in good care lives
 */
public record EarlierReplacement(MonetaryAmount price, int shorter, int longer, Interest interest) {

    private static final int LEAST_LIFE = 1;
    private static final int MOST_LIFE = 40;

    /** Checks what was entered. */
    public static Validated<EarlierReplacement> of(MonetaryAmount price, int shorter, int longer, Interest interest,
            Place place) {
        Problems problems = new Problems();
        if (!price.isPositive()) {
            problems.add(new Problem(Code.OUT_OF_RANGE, place, "a new machine at a price of " + price.getNumber(),
                    "more than 0"));
        }
        if (shorter < LEAST_LIFE || longer > MOST_LIFE || shorter >= longer) {
            problems.add(new Problem(Code.OUT_OF_RANGE, place, "lives of " + shorter + " and " + longer + " years",
                    "from " + LEAST_LIFE + " to " + MOST_LIFE + " years, the neglected machine's the shorter"));
        }
        return problems.or(() -> new EarlierReplacement(price, shorter, longer, interest));
    }

    /** How much more a year the shorter life costs, rounded once. */
    public SourcedAmount difference() {
        return owning(Figure.price(price, "").times(interest.annualOfPresent(shorter))
                .minus(Figure.price(price, "").times(interest.annualOfPresent(longer))));
    }

    private SourcedAmount owning(Figure figure) {
        CurrencyUnit currency = price.getCurrency();
        return SourcedAmount.of(figure.rounded(Rounding.OWNING, currency), Provenance.DERIVED, currency);
    }
}
