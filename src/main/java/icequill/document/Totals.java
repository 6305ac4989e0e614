package icequill.document;

import icequill.explain.Explanation;
import icequill.explain.Phrase;
import icequill.tax.TaxPlace;
import icequill.tax.TaxTotal;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The sums of a paper.
 *
 * @param lines the lines' nets together
 * @param discount on the whole document
 * @param net what is left, before tax
 * @param taxPlace whose rules were used
 * @param gross net and tax together: what is due
 */
public record Totals(MonetaryAmount lines, Optional<Discount> discount, MonetaryAmount net, TaxPlace taxPlace,
        List<TaxTotal> taxes, MonetaryAmount tax, MonetaryAmount gross) {

    /** A discount on the whole document; the amount is positive. */
    public record Discount(Phrase text, MonetaryAmount amount, Explanation how) {}

    public Totals {
        taxes = List.copyOf(taxes);
    }
}
