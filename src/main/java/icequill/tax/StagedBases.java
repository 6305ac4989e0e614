package icequill.tax;

import icequill.explain.Explanation;
import icequill.explain.Figure;
import icequill.money.Amounts;
import icequill.money.Shares;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Divides a price that has parts at several rates: a stage is figured of all of them together, and each rate has of it by largest
 * remainder of what is left at it. What takes something back is divided by itself.
 *
 * @param whole at each rate; at least one
 */
record StagedBases(List<MonetaryAmount> whole, CurrencyUnit currency) {

    /**
     * What is in one stage.
     *
     * @param bases at each rate, in the order of the whole
     */
    record Part(Figure figure, List<MonetaryAmount> bases) {}

    StagedBases {
        whole = List.copyOf(whole);
    }

    /**
     * The next stage.
     *
     * @param before the stages before it
     * @param share of a sum that is in the stage
     */
    Part next(List<Part> before, Function<MonetaryAmount, Figure> share) {
        List<MonetaryAmount> bases = new ArrayList<>(Collections.nCopies(whole.size(), Amounts.zero(currency)));
        List<Predicate<MonetaryAmount>> signs = List.of(base -> !base.isNegative(), MonetaryAmount::isNegative);
        Figure figure = signs.stream().map(this::indexes).filter(indexes -> !indexes.isEmpty())
                .map(indexes -> divide(indexes, share, before, bases)).reduce(Figure::plus).orElseThrow();
        return new Part(figure, bases);
    }

    private List<Integer> indexes(Predicate<MonetaryAmount> sign) {
        return IntStream.range(0, whole.size()).filter(i -> sign.test(whole.get(i))).boxed().toList();
    }

    private Figure divide(List<Integer> indexes, Function<MonetaryAmount, Figure> share, List<Part> before,
            List<MonetaryAmount> bases) {
        Figure figure = share.apply(Amounts.sum(indexes.stream().map(whole::get).toList(), currency));
        MonetaryAmount sum = Explanation.of(figure).amount(currency);
        if (!sum.isZero()) {
            List<BigDecimal> left = indexes.stream().map(i -> Amounts.number(left(i, before)).abs()).toList();
            List<MonetaryAmount> parts = Shares.byLargestRemainder(sum, left);
            IntStream.range(0, indexes.size()).forEach(i -> bases.set(indexes.get(i), parts.get(i)));
        }
        return figure;
    }

    private MonetaryAmount left(int index, List<Part> before) {
        return before.stream().map(part -> part.bases().get(index))
                .reduce(whole.get(index), MonetaryAmount::subtract);
    }
}
