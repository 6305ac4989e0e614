package icequill.answer.amounts;

import icequill.document.InvoiceLine;
import icequill.render.words.Sentences;
import icequill.work.Outcome;
import java.util.function.UnaryOperator;
import javax.money.MonetaryAmount;

/**
 * One line of a paper.
 *
 * @param list before allowances
 * @param taxBase what of it tax is figured from
 */
public record LineAmounts(String text, Outcome outcome, MonetaryAmount list, MonetaryAmount allowance,
        MonetaryAmount net, MonetaryAmount taxBase) {

    static LineAmounts of(InvoiceLine line, UnaryOperator<MonetaryAmount> sign, Sentences sentences) {
        return new LineAmounts(sentences.say(line.text()), line.outcome(), sign.apply(line.list()),
                sign.apply(line.allowance()), sign.apply(line.net()), sign.apply(line.tax().base()));
    }
}
