package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.render.page.Texts;
import icequill.render.words.Sentences;
import icequill.work.Outcome;
import java.util.ArrayList;
import java.util.List;
import javax.money.MonetaryAmount;

/** A line with its price, and how that was figured, as texts. */
record LineView(InvoiceLine line, Sentences sentences) {

    /**
     * A row of a table.
     *
     * @param number may be empty
     * @param outcome empty for what is charged
     * @param quantity empty without a price for one
     * @param price for one; may be empty
     * @param list the amount before discounts
     * @param marked whether it says that it is taxed
     */
    record Row(String number, String text, String outcome, String quantity, String price, String list, String amount,
            String how, boolean marked)
            implements
            Texts {

        Row numbered(String own) {
            return new Row(own, text, outcome, quantity, price, list, amount, how, marked);
        }
    }

    /** @param marked whether it says that it is taxed */
    Row row(boolean marked) {
        return new Row("", Sentences.capitalized(sentences.say(line.text())),
                line.outcome() == Outcome.CHARGED
                        ? ""
                        : sentences.word("outcome." + ConstantKey.of(line.outcome())),
                line.unitPrice().isPresent() ? sentences.quantity(line.quantity()) : "",
                line.unitPrice()
                        .map(price -> sentences.formats().amount(price.amount()) + sentences.each(price.per()))
                        .orElse(""),
                sentences.formats().amount(line.list()), sentences.formats().amount(line.net()), how(), marked);
    }

    /** A discount is told as list price, what is taken off, and what is left. */
    private String formula(Figure figure) {
        Figure bare = figure instanceof Figure.Rounded rounded ? rounded.of() : figure;
        if (!line.allowance().isZero() && bare instanceof Figure.Joined joined
                && joined.operator() == Figure.Operator.MINUS) {
            return sentences.word("line.discounted", equal(joined.left(), line.list()),
                    equal(joined.right(), line.allowance()), sentences.formats().amount(line.net()));
        }
        return sentences.formula(figure);
    }

    private String equal(Figure figure, MonetaryAmount amount) {
        String formula = sentences.formula(figure);
        String sum = sentences.formats().amount(amount);
        return formula.equals(sum) ? sum : formula + " = " + sum;
    }

    /** Where, by what arithmetic, and why. A bare amount explains nothing, so it is not said twice. */
    private String how() {
        List<String> parts = new ArrayList<>();
        line.machine().ifPresent(parts::add);
        Explanation how = line.how();
        String formula = formula(how.figure());
        if (!formula.equals(sentences.formats().amount(line.net()))) {
            parts.add(formula);
        }
        how.reasons().forEach(reason -> parts.add(sentences.say(reason)));
        MonetaryAmount share = line.net().subtract(line.tax().base());
        if (!share.isZero()) {
            parts.add(sentences.word("line.discount-share", sentences.formats().amount(share)));
        }
        return Sentences.capitalized(String.join("; ", parts));
    }
}
