package icequill.web.page;

import icequill.files.yaml.Languages;
import icequill.party.Language;
import java.text.Normalizer;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Months by their names. */
final class MonthName {

    private static final int LETTERS = 3;

    private MonthName() {
    }

    /** By its name in any language of the program, or by three letters of it or more that no other begins with. */
    static Optional<Month> of(String name) {
        String plain = plain(name);
        List<Month> found = plain.length() < LETTERS
                ? List.of()
                : Arrays.stream(Month.values()).filter(month -> names(month).anyMatch(known -> known.startsWith(plain)))
                        .toList();
        return found.size() == 1 ? Optional.of(found.getFirst()) : Optional.empty();
    }

    private static Stream<String> names(Month month) {
        return Languages.known().stream().map(Language::tag).map(Locale::of)
                .map(locale -> plain(month.getDisplayName(TextStyle.FULL, locale)));
    }

    /** Without accents, in small letters. */
    static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT);
    }
}
