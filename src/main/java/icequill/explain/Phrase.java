package icequill.explain;

import icequill.money.Amounts;
import icequill.problem.Check;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Something said to a reader, before a language is chosen: the words file holds the sentence under the key, with the facts
 * in places {@code {0}}, {@code {1}} and so on.
 *
 * @param key letters, digits, points and hyphens
 */
public record Phrase(String key, List<Fact> facts) {

    public Phrase {
        Check.that(key.matches("[A-Za-z0-9.-]+"), "not a key: " + key);
        facts = List.copyOf(facts);
    }

    public static Phrase of(String key, Fact... facts) {
        return new Phrase(key, List.of(facts));
    }

    /** As a note of the grammar that stands in the package's description: the key, then the facts. */
    String note() {
        return facts.stream().map(fact -> " " + word(fact)).collect(Collectors.joining("", key, ""));
    }

    private static String word(Fact fact) {
        return switch (fact) {
        case Fact.Text text -> quoted(text.text());
        case Fact.Named named -> quoted(named.english());
        case Fact.Word word -> word.key();
        case Fact.Measure measure -> measure.number().toPlainString() + measure.unit();
        case Fact.Amount amount -> Amounts.plain(amount.amount()) + amount.amount().getCurrency().getCurrencyCode();
        case Fact.Part part -> part.percent().value().toPlainString() + "%";
        case Fact.Day day -> day.date().toString();
        case Fact.Time time -> time.time().toString();
        case Fact.Several several -> several.facts().stream().map(Phrase::word).collect(Collectors.joining(" "));
        };
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }
}
