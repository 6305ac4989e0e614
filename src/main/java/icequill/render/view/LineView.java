package icequill.render.view;

import icequill.document.InvoiceLine;
import icequill.explain.ConstantKey;
import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.render.words.Sentences;
import icequill.work.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.money.MonetaryAmount;

/** A line with its price, and how that was figured, as texts. */
record LineView(InvoiceLine line, Sentences sentences) {

    /**
     * The row of a table.
     *
     * @param marked whether it says that it is taxed
     */
    Map<String, Object> row(boolean marked) {
        Map<String, Object> view = new LinkedHashMap<>();
        view.put("text", Sentences.capitalized(sentences.say(line.text())));
        view.put("outcome", line.outcome() == Outcome.CHARGED
                ? ""
                : sentences.word("outcome." + ConstantKey.of(line.outcome())));
        view.put("quantity", line.unitPrice().isPresent() ? sentences.quantity(line.quantity()) : "");
        view.put("price", line.unitPrice()
                .map(price -> sentences.formats().amount(price.amount()) + sentences.each(price.per())).orElse(""));
        view.put("list", sentences.formats().amount(line.list()));
        view.put("amount", sentences.formats().amount(line.net()));
        view.put("how", how());
        view.put("marked", marked);
        return view;
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
