package icequill.party;

import icequill.problem.Check;
import java.util.Optional;

/**
 * A language of papers and screens: any that there is a file of words for.
 *
 * @param tag two small letters, the ISO 639-1 code
 */
public record Language(String tag) {

    public static final Language ENGLISH = new Language("en");
    public static final Language SPANISH = new Language("es");

    private static final String TAG = "[a-z]{2}";

    public Language {
        Check.that(tag.matches(TAG), "not a language: " + tag);
    }

    /** Empty where the text is no such code. */
    public static Optional<Language> ofTag(String tag) {
        return Optional.of(tag).filter(text -> text.matches(TAG)).map(Language::new);
    }

    @Override
    public String toString() {
        return tag;
    }
}
