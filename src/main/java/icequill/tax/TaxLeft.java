package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.explain.Phrase;
import icequill.money.Amounts;
import icequill.tax.TaxTotal.ComponentTax;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What is left of the taxes of a work after those that were asked for before; negative at a rate at which more was asked for than is due.
 *
 * @param whole by rate, a rate any number of times
 * @param before likewise
 */
public record TaxLeft(List<TaxTotal> whole, List<TaxTotal> before) {

    private static final Phrase WHY = Phrase.of("reason.tax-left");

    public TaxLeft {
        whole = List.copyOf(whole);
        before = List.copyOf(before);
    }

    /** By rate, in the order of the whole; without those of which nothing is left. */
    public List<TaxTotal> totals() {
        return Stream.concat(whole.stream(), before.stream()).map(TaxTotal::rate).distinct().map(this::left)
                .filter(total -> !total.base().isZero() || !total.tax().isZero()).toList();
    }

    private TaxTotal left(TaxRate rate) {
        List<TaxTotal> mine = of(rate, whole);
        List<TaxTotal> others = of(rate, before);
        if (mine.size() == 1 && others.isEmpty()) {
            return mine.getFirst();
        }
        TaxTotal like = Stream.concat(mine.stream(), others.stream()).findFirst().orElseThrow();
        Explanation tax = left(mine, others, TaxTotal::tax);
        return new TaxTotal(rate, amount(left(mine, others, TaxTotal::base), like), amount(tax, like), tax,
                IntStream.range(0, like.components().size()).mapToObj(i -> left(mine, others, i)).toList());
    }

    private static List<TaxTotal> of(TaxRate rate, List<TaxTotal> totals) {
        return totals.stream().filter(total -> total.rate().equals(rate)).toList();
    }

    private static ComponentTax left(List<TaxTotal> mine, List<TaxTotal> others, int index) {
        List<TaxTotal> all = Stream.concat(mine.stream(), others.stream()).toList();
        Explanation tax = left(mine, others, total -> total.components().get(index).amount());
        boolean isPartial = all.stream().anyMatch(total -> total.components().get(index).base().isPresent());
        Explanation base = left(mine, others, total -> total.components().get(index).base().orElse(total.base()));
        return new ComponentTax(all.getFirst().components().get(index).component(), amount(tax, all.getFirst()), tax,
                Optional.of(amount(base, all.getFirst())).filter(some -> isPartial));
    }

    private static Explanation left(List<TaxTotal> mine, List<TaxTotal> others,
            Function<TaxTotal, MonetaryAmount> what) {
        Figure sum = mine.stream().map(what).map(amount -> Figure.price(amount, "")).reduce(Figure::plus)
                .orElseGet(() -> Figure.price(Amounts.zero(others.getFirst().base().getCurrency()), ""));
        return Explanation.of(others.stream().map(what).map(amount -> Figure.price(amount, ""))
                .reduce(sum, Figure::minus), WHY);
    }

    private static MonetaryAmount amount(Explanation how, TaxTotal like) {
        return how.amount(like.base().getCurrency());
    }
}
