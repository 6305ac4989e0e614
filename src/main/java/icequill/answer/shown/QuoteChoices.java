package icequill.answer.shown;

import icequill.document.MaintenanceQuote;
import icequill.document.Paper;
import icequill.document.PlanChoice;
import icequill.explain.ConstantKey;
import icequill.money.Amounts;
import icequill.render.words.Sentences;
import java.util.List;
import java.util.Optional;
import javax.money.MonetaryAmount;

/** The ways of care that a maintenance quote offers, by the year, in the language of the quote. */
public record QuoteChoices(List<Choice> choices, Sentences sentences) {

    /**
     * One of them.
     *
     * @param visits planned in the year
     * @param tax estimated
     */
    public record Choice(String name, int visits, MonetaryAmount net, MonetaryAmount tax, MonetaryAmount gross) {

        private static Choice of(PlanChoice choice, Sentences sentences) {
            String plan = choice.plan().map(sentences::in).orElse("");
            return new Choice(Sentences.capitalized(
                    sentences.word("choice.name." + ConstantKey.of(choice.kind()), plan)), choice.visits(),
                    choice.net(), choice.tax(), choice.gross());
        }
    }

    public QuoteChoices {
        choices = List.copyOf(choices);
    }

    /** Empty for any other paper. */
    public static Optional<QuoteChoices> of(Paper paper) {
        if (!(paper instanceof MaintenanceQuote quote)) {
            return Optional.empty();
        }
        Sentences sentences = Sentences.of(quote.language(), quote.shop().address().country());
        return Optional.of(new QuoteChoices(
                quote.choices().stream().map(choice -> Choice.of(choice, sentences)).toList(), sentences));
    }

    /** The heads of {@link #rows}, all but the first above numbers. */
    public List<String> head() {
        return List.of(sentences.word("choice.what"), sentences.word("choice.visits-head"),
                sentences.word("table.net"), sentences.word("table.tax"), sentences.word("table.total"));
    }

    public List<List<String>> rows() {
        return choices.stream().map(choice -> List.of(choice.name(), String.valueOf(choice.visits()),
                Amounts.plain(choice.net()), Amounts.plain(choice.tax()), Amounts.plain(choice.gross()))).toList();
    }
}
