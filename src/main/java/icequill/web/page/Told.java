package icequill.web.page;

import icequill.party.Language;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is told of problems, as pages tell it: in the language of their reader, and without the words of a terminal. Immutable.
 *
 * <p>Each line of its file holds an English sentence and the one told instead, with {0} and so on for what varies; nothing instead
 * where it is of no use on a page.
 */
final class Told {

    private static final Map<Language, Told> READ = new ConcurrentHashMap<>();
    private static final String INSTEAD = " =>";
    private static final Pattern PLACE = Pattern.compile("\\{([0-9])\\}");

    private final Language language;
    private final List<Line> lines;

    private record Line(Pattern english, String told, int letters) {

        static Line written(String line) {
            int middle = line.indexOf(INSTEAD);
            String english = line.substring(0, middle);
            String pattern = "\\Q" + PLACE.matcher(english).replaceAll("\\\\E(?<p$1>.*?)\\\\Q") + "\\E";
            return new Line(Pattern.compile(pattern, Pattern.DOTALL),
                    line.substring(middle + INSTEAD.length()).strip(), PLACE.matcher(english).replaceAll("").length());
        }

        Optional<String> instead(String english) {
            Matcher found = this.english.matcher(english);
            return found.matches() ? Optional.of(filled(found)) : Optional.empty();
        }

        private String filled(MatchResult found) {
            return PLACE.matcher(told)
                    .replaceAll(place -> Matcher.quoteReplacement(found.group("p" + place.group(1))));
        }
    }

    private Told(Language language, List<Line> lines) {
        this.language = language;
        this.lines = List.copyOf(lines);
    }

    static Told in(Language language) {
        return READ.computeIfAbsent(language, each -> new Told(each, file(each).filter(line -> line.contains(INSTEAD))
                .map(Line::written).sorted(Comparator.comparingInt(Line::letters).reversed()).toList()));
    }

    /** The sentence by the line that says the most of it; the English one as it is to who reads English; else empty. */
    Optional<String> of(String english) {
        return lines.stream().flatMap(line -> line.instead(english).stream()).findFirst()
                .or(() -> language.equals(Language.ENGLISH) ? Optional.of(english) : Optional.empty());
    }

    private static Stream<String> file(Language language) {
        try (InputStream stream = Told.class.getResourceAsStream("/icequill/web/told/" + language.tag() + ".txt")) {
            return text(stream).lines();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(@Nullable InputStream stream) throws IOException {
        return stream == null ? "" : new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
}
