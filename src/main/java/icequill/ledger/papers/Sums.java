package icequill.ledger.papers;

import java.util.List;
import javax.money.MonetaryAmount;

/**
 * What a paper with prices comes to. All amounts are positive, whole and of one currency.
 *
 * @param lines the nets of the lines together
 * @param net after a discount on the whole paper
 * @param gross net and tax together
 * @param each every line, in the paper's order
 */
public record Sums(MonetaryAmount lines, MonetaryAmount net, MonetaryAmount tax, MonetaryAmount gross,
        List<Line> each) {

    /**
     * One line.
     *
     * @param chargeClass and {@code outcome}: by name
     * @param base net less the line's share of the discount
     */
    public record Line(String chargeClass, String outcome, String text, MonetaryAmount net, MonetaryAmount base) {}

    public Sums {
        each = List.copyOf(each);
    }
}
