package icequill.party;

import icequill.explain.Fact;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A name or short text of the shop's own, in English, in Spanish, and in whatever further languages the shop gives it; readers of any
 * other get the English one.
 *
 * @param others by the language's tag; empty where there are none
 */
public record Wording(String english, String spanish, Optional<Map<String, String>> others) {

    public Wording {
        others = others.filter(given -> !given.isEmpty()).map(Map::copyOf);
    }

    public Wording(String english, String spanish) {
        this(english, spanish, Optional.empty());
    }

    /** The same in every language. */
    public static Wording same(String text) {
        return new Wording(text, text);
    }

    /** Both, such as a place and what is there. */
    public Wording and(Wording other) {
        Map<String, String> both = new HashMap<>();
        others.ifPresent(given -> given.keySet().forEach(tag -> both.put(tag, "")));
        other.others.ifPresent(given -> given.keySet().forEach(tag -> both.put(tag, "")));
        both.replaceAll((tag, none) -> in(new Language(tag)) + ": " + other.in(new Language(tag)));
        return new Wording(english + ": " + other.english, spanish + ": " + other.spanish, Optional.of(both));
    }

    /** As a detail of a phrase. */
    public Fact named() {
        return new Fact.Named(english, spanish, others);
    }

    public String in(Language language) {
        return language.equals(Language.SPANISH)
                ? spanish
                : others.map(given -> given.get(language.tag())).orElse(english);
    }
}
