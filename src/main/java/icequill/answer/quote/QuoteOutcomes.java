package icequill.answer.quote;

import icequill.explain.ConstantKey;
import icequill.ledger.papers.PaperKind;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.money.CurrencyUnit;
import javax.money.MonetaryAmount;

/**
 * Quotes won and lost.
 *
 * @param outcomes by outcome, in the order of {@link Outcome}; those that no quote has are left out
 * @param reasons why quotes were declined, by reason, the most first
 * @param quotes in the order of their days
 */
public record QuoteOutcomes(List<Sum> outcomes, List<Sum> reasons, List<Row> quotes) {

    /** The heads of {@link #cells}, all but the first above numbers. */
    public static final List<String> HEAD = List.of("", "quotes", "net");

    /** What became of a quote by a day. */
    public enum Outcome {
        OPEN, ACCEPTED, DECLINED, LAPSED
    }

    /**
     * Some quotes together.
     *
     * @param name of an outcome or a reason
     * @param net of all of them before tax, of a plan by the year
     */
    public record Sum(String name, int count, MonetaryAmount net) {

        static Sum of(String name, List<Row> rows, CurrencyUnit currency) {
            return new Sum(name, rows.size(), Amounts.sum(rows.stream().map(Row::net).toList(), currency));
        }

        private List<String> cells(String before) {
            return List.of(before + ConstantKey.words(name.replace('-', '_')), String.valueOf(count),
                    net.getCurrency().getCurrencyCode() + " " + Amounts.plain(net));
        }
    }

    /**
     * One quote.
     *
     * @param reason why it was declined
     * @param net before tax: of a repair; of the plan that was accepted, else of the one that was recommended, by the year
     */
    public record Row(String number, PaperKind kind, LocalDate date, Outcome outcome, Optional<String> reason,
            MonetaryAmount net) {}

    public QuoteOutcomes {
        outcomes = List.copyOf(outcomes);
        reasons = List.copyOf(reasons);
        quotes = List.copyOf(quotes);
    }

    /** Sums up quotes. */
    public static QuoteOutcomes of(List<Row> quotes, CurrencyUnit currency) {
        List<Sum> outcomes = Stream.of(Outcome.values())
                .map(outcome -> Sum.of(ConstantKey.of(outcome),
                        quotes.stream().filter(row -> row.outcome() == outcome).toList(), currency))
                .filter(sum -> sum.count() > 0).toList();
        List<Sum> reasons = quotes.stream().flatMap(row -> row.reason().stream()).distinct()
                .map(reason -> Sum.of(reason,
                        quotes.stream().filter(row -> row.reason().filter(reason::equals).isPresent()).toList(),
                        currency))
                .sorted((one, other) -> one.count() == other.count()
                        ? one.name().compareTo(other.name())
                        : Integer.compare(other.count(), one.count()))
                .toList();
        return new QuoteOutcomes(outcomes, reasons, quotes);
    }

    /** As rows of a table. */
    public List<List<String>> cells() {
        List<List<String>> cells = new ArrayList<>();
        outcomes.forEach(sum -> {
            cells.add(sum.cells(""));
            if (sum.name().equals(ConstantKey.of(Outcome.DECLINED))) {
                reasons.forEach(reason -> cells.add(reason.cells("  ")));
            }
        });
        return cells;
    }
}
