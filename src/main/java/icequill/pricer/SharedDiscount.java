package icequill.pricer;

import icequill.explain.Explanation;
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
}
