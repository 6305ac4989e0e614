package icequill.files.yaml;

import icequill.party.Language;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The languages that papers can be printed in: those that there is a file of words for. */
public final class Languages {

    private Languages() {
    }

    /** Looked for when first asked for: there are some two hundred that might be known. */
    private static final class Found {
        private static final List<Language> ALL = Arrays.stream(Locale.getISOLanguages()).sorted()
                .map(Language::ofTag).flatMap(Optional::stream).filter(Languages::isKnown).toList();
    }

    /** In the order of their codes. */
    public static List<Language> known() {
        return Found.ALL;
    }

    public static boolean isKnown(Language language) {
        return Languages.class.getResource("/icequill/templates/words/" + language.tag() + ".properties") != null;
    }

    static Problem unknown(Place place, String tag) {
        return Problem.unknownName(place, "language", tag, known().stream().map(Language::tag).toList());
    }
}
