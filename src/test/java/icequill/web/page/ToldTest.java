package icequill.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.party.Language;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence that a page can tell of what is wrong has one for it in Spanish, and none speaks of a terminal. */
class ToldTest {

    private static final Language SPANISH = Language.ofTag("es").orElseThrow();
    private static final Pattern PLACE = Pattern.compile("\\{[0-9]\\}");
    /** Rooms whose problems pages show. */
    private static final List<String> ROOMS = List.of("web", "office.asking", "office.billing", "office.care",
            "office.register", "office.quoting", "office.call", "office.agreement", "life.call", "life.agreement",
            "work", "visits", "pricer", "tax", "rates",
            "shop", "files.form",
            "files.yaml", "papers", "account", "files.pricing", "planner", "plans", "ledger", "mail");
    /** What only the terminal does. */
    private static final Set<String> TERMINAL = Set.of("web.OfficeServer", "files.form.DatabasePassword",
            "shop.AccountLoader", "shop.ForecastLoader", "shop.ShippedFiles", "office.care.BookMaintenance",
            "office.care.IssuedPaperReader",
            "ledger.care.Restore", "ledger.care.Against", "ledger.care.Backup", "ledger.care.FromPapers",
            "plans.RenewalAssembly");

    private static ToldSentences sources;

    @BeforeAll
    static void read() throws IOException {
        sources = ToldSentences.read();
    }

    @Test
    void everySentence_hasOneInSpanish() throws IOException {
        Told spanish = Told.in(SPANISH);
        List<String> lines = lines("es").stream().map(ToldTest::english).toList();
        assertThat(sources.classes().entrySet().stream().filter(told -> isOfPages(told.getValue()))
                .filter(told -> PLACE.matcher(told.getKey()).replaceAll("").matches(".*[a-z]{2}.*"))
                .filter(told -> spanish.of(told.getKey()).isEmpty())
                .filter(told -> lines.stream().noneMatch(filledIn(told.getKey())))).isEmpty();
    }

    /** Where a word of a few stands in a place, the lines say the sentence with each of them. */
    private static Predicate<String> filledIn(String sentence) {
        return Pattern.compile(PLACE.splitAsStream(sentence).map(Pattern::quote).collect(Collectors.joining(".+"))
                + (sentence.endsWith("}") ? ".+" : "")).asMatchPredicate();
    }

    private static boolean isOfPages(String type) {
        return !TERMINAL.contains(type) && ROOMS.stream().anyMatch(room -> type.startsWith(room + "."));
    }

    @Test
    void onEnglishPages_noneSpeaksOfCommands() {
        Told english = Told.in(Language.ENGLISH);
        assertThat(sources.classes().entrySet().stream().filter(told -> isOfPages(told.getValue()))
                .map(told -> english.of(told.getKey()).orElseThrow())
                .filter(told -> told.contains("icequill ") || told.contains("--"))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void lines_haveTheSamePlacesOnBothSides(String language) throws IOException {
        assertThat(lines(language)).isNotEmpty().allSatisfy(line -> {
            assertThat(line).contains(" =>");
            String told = line.substring(line.indexOf(" =>") + 3);
            assertThat(told.isBlank() ? Set.of() : places(told)).as(line)
                    .isEqualTo(told.isBlank() ? Set.of() : places(english(line)));
            assertThat(told).doesNotContain("icequill ", "--");
        });
    }

    /** A line may be made of what two classes say: one the kind, another the sentence. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void noLine_isDead(String language) throws IOException {
        String all = String.join("\u0000", sources.texts());
        assertThat(lines(language).stream().map(ToldTest::english)
                .filter(line -> !PLACE.splitAsStream(line).allMatch(part -> stands(part, all, 2)))).isEmpty();
    }

    private static boolean stands(String part, String all, int cuts) {
        return all.contains(part) || (cuts > 0 && Stream.iterate(part.length() - 1, at -> at > 0, at -> at - 1)
                .filter(at -> all.contains(part.substring(0, at)))
                .anyMatch(at -> stands(part.substring(at), all, cuts - 1)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
            "there is no machine \"bar\" | no existe la máquina «bar»",
            "allowed: a, b and 12 more | a, b y 12 más", "first: icequill visit add late-call | ``"})
    void sentence_isToldInSpanish(String english, String spanish) {
        assertThat(Told.in(SPANISH).of(english)).contains(spanish == null ? "" : spanish);
    }

    private static String english(String line) {
        return line.substring(0, line.indexOf(" =>"));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> lines(String language) throws IOException {
        return Arrays.asList(Files.readString(Path.of("src/main/resources/icequill/web/told/" + language + ".txt"))
                .split("\n"));
    }
}
