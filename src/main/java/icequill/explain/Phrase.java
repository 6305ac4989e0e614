package icequill.explain;

import icequill.problem.Check;
import java.util.List;

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
}
