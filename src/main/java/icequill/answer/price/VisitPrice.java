package icequill.answer.price;

import icequill.problem.Problem;
import icequill.work.Outcome;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * A visit's price, in the language of the reader.
 *
 * @param remarks on its taxes
 * @param notices what should be known about it
 * @param cost for the owner alone, as are the {@code margin} and {@code withoutCost}
 * @param margin of the lines of which it is known what they cost
 * @param withoutCost what the others come to; missing where there are none
 */
public record VisitPrice(List<Line> lines, MonetaryAmount net, List<Tax> taxes, MonetaryAmount tax,
        MonetaryAmount gross, List<String> remarks, List<Problem> notices, Optional<MonetaryAmount> cost,
        Optional<MonetaryAmount> margin, Optional<MonetaryAmount> withoutCost) {

    /**
     * One line, or the discount on the whole.
     *
     * @param chargeClass a class of charges, or discount
     * @param unit by its symbol
     * @param unitPrice missing where a line is not quantity times price
     * @param unitPricePer the unit of the price, by its symbol
     * @param list before any allowance
     * @param net list less allowance, before tax
     * @param how the net was figured, in the printed grammar, and {@code why}
     * @param formula the same as one works it out with pencil and paper
     * @param cost for the owner alone, missing where it is not known, as are how it was figured, why, and the margin
     */
    public record Line(String chargeClass, Outcome outcome, String text, BigDecimal quantity, String unit,
            Optional<MonetaryAmount> unitPrice, Optional<String> unitPricePer, MonetaryAmount list,
            MonetaryAmount allowance, MonetaryAmount net, String how, String formula, List<String> why,
            Optional<MonetaryAmount> cost,
            Optional<String> costHow, Optional<List<String>> costWhy, Optional<MonetaryAmount> margin) {}

    /**
     * What one authority gets.
     *
     * @param percent missing where nothing is due
     * @param formula how it was figured, as one works it out with pencil and paper
     */
    public record Tax(String name, MonetaryAmount base, Optional<BigDecimal> percent, MonetaryAmount amount,
            String how, String formula, List<String> why) {}
}
