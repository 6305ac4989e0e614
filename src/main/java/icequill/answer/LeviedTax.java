package icequill.answer;

import icequill.explain.Explanation;
import icequill.render.words.Sentences;
import icequill.tax.TaxTotal;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.MonetaryAmount;

/**
 * What one authority gets.
 *
 * @param name of the authority's tax, in the language of the reader, or why nothing is due
 * @param percent empty where nothing is due
 */
public record LeviedTax(String name, MonetaryAmount base, Optional<BigDecimal> percent, MonetaryAmount amount,
        Explanation how) {

    /** All of a paper, in its order. */
    public static List<LeviedTax> of(List<TaxTotal> totals, Sentences sentences) {
        return totals.stream().flatMap(total -> of(total, sentences)).toList();
    }

    private static Stream<LeviedTax> of(TaxTotal total, Sentences sentences) {
        return total.components().isEmpty()
                ? Stream.of(new LeviedTax(sentences.say(total.rate().untaxed()), total.base(), Optional.empty(),
                        total.tax(), total.how()))
                : total.components().stream().map(part -> new LeviedTax(sentences.in(part.component().name()),
                        part.base().orElse(total.base()), Optional.of(part.component().percent().value()),
                        part.amount(), part.how()));
    }
}
