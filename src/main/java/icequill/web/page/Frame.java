package icequill.web.page;

import icequill.party.Language;
import icequill.render.words.Sentences;
import icequill.web.door.Session;
import java.util.List;
import java.util.Locale;

/**
 * What surrounds every page.
 *
 * @param path of the page, by which its place among the others is shown
 * @param assets where styles and scripts lie, by name
 * @param languages that the page can be had in
 */
public record Frame(Reader reader, Session session, String path, Assets assets, List<Language> languages) {

    public Frame {
        languages = List.copyOf(languages);
    }

    /** A language's name in itself. */
    public String languageName(Language language) {
        Locale locale = Locale.of(language.tag());
        return Sentences.capitalized(locale.getDisplayLanguage(locale));
    }
}
