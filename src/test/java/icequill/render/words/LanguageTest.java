package icequill.render.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.files.yaml.Languages;
import icequill.party.Language;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file of words is all that a language needs: two of them lie beside these tests, and no line of the program knows of them. */
class LanguageTest {

    private static final Language GERMAN = new Language("de");

    @Test
    void known_thoseThatHaveWords() {
        assertThat(Languages.known()).contains(Language.ENGLISH, Language.SPANISH, GERMAN).doesNotContain(
                new Language("it"));
        assertThat(Language.ofTag("de")).contains(GERMAN);
        assertThat(List.of("d", "DE", "deu", "")).allSatisfy(tag -> assertThat(Language.ofTag(tag)).isEmpty());
        assertThatIllegalArgumentException().isThrownBy(() -> new Language("../x")).withMessage("not a language: ../x");
    }

    /** As a German reader in Germany and in the United States writes it (common practice). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"DE | 13. Mai 2026 | 18:05 | 1.234,5 | 8,875 %",
            "CH | 13. Mai 2026 | 18:05 | 1’234.5 | 8.875 %", "US | 13. Mai 2026 | 6:05 nachm. | 1.234,5 | 8,875 %"})
    void german_daysTimesNumbers(String country, String day, String time, String number, String percent) {
        Formats formats = Formats.of(GERMAN, country);

        assertThat(formats.day(LocalDate.of(2026, 5, 13))).isEqualTo(day);
        assertThat(plain(formats.time(LocalTime.of(18, 5)))).isEqualTo(time);
        assertThat(formats.number(new BigDecimal("1234.5"))).isEqualTo(number);
        assertThat(plain(formats.percent(new BigDecimal("8.875")))).isEqualTo(percent);
    }

    /** German says the singular of exactly one, French of all below two (Unicode CLDR, plural rules). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"de | DE | 0 | 0 Tage", "de | DE | 1 | 1 Tag", "de | DE | 1.5 | 1,5 Tage",
            "de | DE | 2 | 2 Tage", "fr | FR | 0 | 0 jour", "fr | FR | 1 | 1 jour", "fr | FR | 1.5 | 1,5 jour",
            "fr | FR | 2 | 2 jours", "en | US | 0 | 0 days", "en | US | 1 | 1 day", "en | US | 1.5 | 1.5 days",
            "es | MX | 0 | 0 días"})
    void measure_oneAndMany_asTheLanguageCounts(Language language, String country, BigDecimal number,
            String expected) {
        assertThat(plain(Sentences.of(language, country)
                .say(Phrase.of("line.material", new Fact.Measure(number, "day"))))).isEqualTo(expected);
    }

    /** What a file does not say yet is said in English; a word that it says without a singular has none. */
    @Test
    void words_missing_inEnglish() {
        Words german = Words.of(GERMAN);

        assertThat(german.text("invoice.title")).isEqualTo("Rechnung");
        assertThat(german.text("renewal.title")).isEqualTo(Words.of(Language.ENGLISH).text("renewal.title"));
        assertThat(german.find("unit.h.one")).isEmpty();
        assertThat(german.find("unit.day.one")).contains("Tag");
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
