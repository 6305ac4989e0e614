package icequill.pricer;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import java.util.List;
import javax.money.MonetaryAmount;

/**
 * A discount on the whole document.
 *
 * @param amount positive
 * @param shares of the lines, in their order; they add up to the amount
 */
public record SharedDiscount(Phrase text, MonetaryAmount amount, Explanation how, List<MonetaryAmount> shares) {

    public SharedDiscount {
        shares = List.copyOf(shares);
    }

    /** How the negative amount that stands in a list of nets was figured. */
    public Explanation negatedHow() {
        return new Explanation(Figure.term(0, "").minus(how.figure()), how.reasons());
    }
}
