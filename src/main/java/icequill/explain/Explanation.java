package icequill.explain;

import icequill.money.Amounts;
import icequill.money.Exact;
import icequill.money.Rounding;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * How one amount was figured, and why so.
 *
 * @param reasons in the order in which they bear on the amount; may be empty
 */
public record Explanation(Figure figure, List<Phrase> reasons) {

    public Explanation {
        reasons = List.copyOf(reasons);
    }

    public static Explanation of(Figure figure, Phrase... reasons) {
        return new Explanation(figure, List.of(reasons));
    }

    /** The amount the figure comes to, which must need no further rounding. */
    public MonetaryAmount amount(CurrencyUnit currency) {
        return Amounts.of(value(currency), currency);
    }

    public Explanation because(Phrase reason) {
        List<Phrase> all = new ArrayList<>(reasons);
        all.add(reason);
        return new Explanation(figure, all);
    }

    /** What it comes to, in the grammar that stands in the package's description. */
    public String text(CurrencyUnit currency) {
        return figure.text() + " = " + value(currency).toPlainString();
    }

    private BigDecimal value(CurrencyUnit currency) {
        int decimals = Rounding.LINE.decimals(currency);
        BigDecimal value = Rounding.halfUp(figure.exact(), decimals);
        if (!Exact.of(value).equals(figure.exact())) {
            throw new IllegalStateException("an explanation must end in a named rounding: " + figure.text());
        }
        return value;
    }
}
