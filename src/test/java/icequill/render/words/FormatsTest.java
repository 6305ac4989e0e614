package icequill.render.words;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.money.Amounts;
import icequill.money.Currencies;
import icequill.party.Language;
import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How numbers, days and times are written; expected texts by common practice of each country, from memory. */
class FormatsTest {

    @ParameterizedTest(name = "{0} in {1}: {2} {3}")
    @CsvSource(delimiter = '|', value = {"en | US | USD | 1234567.5 | 1,234,567.50",
            "es | US | USD | 1234.5 | 1,234.50", "es | MX | USD | 1234.5 | 1,234.50",
            "es | ES | EUR | 12345.5 | 12.345,50", "en | DE | EUR | 1234.5 | 1.234,50",
            "en | GB | GBP | 1234.5 | 1,234.50", "en | JP | JPY | 1234567 | 1,234,567",
            "en | KW | KWD | 1234.5 | 1,234.500", "en | US | USD | -20.3 | −20.30",
            "en | US | USD | 1.8495 | 1.8495"})
    void amount_languageAndCountry_writtenAsThere(Language language, String country, String currency, String number,
            String expected) {
        assertThat(Formats.of(language, country)
                .amount(Amounts.of(new BigDecimal(number), Currencies.find(currency).orElseThrow())))
                .isEqualTo(expected);
    }

    @ParameterizedTest(name = "{0} in {1}")
    @CsvSource(delimiter = '|', value = {"en | US | May 13, 2026 | 12:05 AM | 12:00 PM | 6:05 PM | 8.875%",
            "en | CA | May 13, 2026 | 12:05 AM | 12:00 PM | 6:05 PM | 8.875%",
            "en | GB | 13 May 2026 | 00:05 | 12:00 | 18:05 | 8.875%",
            "en | DE | 13 May 2026 | 00:05 | 12:00 | 18:05 | 8,875%",
            "en | JP | 2026-05-13 | 00:05 | 12:00 | 18:05 | 8.875%",
            "es | US | 13 de mayo de 2026 | 12:05 a. m. | 12:00 p. m. | 6:05 p. m. | 8.875 %",
            "es | ES | 13 de mayo de 2026 | 00:05 | 12:00 | 18:05 | 8,875 %"})
    void dayTimePercent_languageAndCountry_writtenAsThere(Language language, String country, String day,
            String afterMidnight, String noon, String evening, String percent) {
        Formats formats = Formats.of(language, country);

        assertThat(formats.day(LocalDate.of(2026, 5, 13))).isEqualTo(day);
        assertThat(plain(formats.time(LocalTime.of(0, 5)))).isEqualTo(afterMidnight);
        assertThat(plain(formats.time(LocalTime.NOON))).isEqualTo(noon);
        assertThat(plain(formats.time(LocalTime.of(18, 5, 59)))).isEqualTo(evening);
        assertThat(plain(formats.percent(new BigDecimal("8.8750")))).isEqualTo(percent);
    }

    /** Numbers and long dates as the JDK writes them by the Unicode CLDR, where the country does not write the year first; Peru's
     * setiembre is left out, the other spelling of the month. */
    @ParameterizedTest
    @ValueSource(strings = {"en-US", "en-CA", "en-GB", "en-IE", "en-AU", "en-NZ", "en-IN", "en-DE", "en-PH", "en-ES",
            "en-FR", "en-CH", "es-ES", "es-MX", "es-US", "es-AR", "es-CL", "es-CO", "es-PR"})
    void numbersAndDays_areThoseOfTheRuntimesCldr(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        Formats formats = Formats.of(Language.ofTag(locale.getLanguage()).orElseThrow(), locale.getCountry());
        NumberFormat numbers = NumberFormat.getNumberInstance(locale);
        numbers.setMinimumFractionDigits(2);

        assertThat(formats.amount(Amounts.of(new BigDecimal("1234567.5"), Currencies.find("USD").orElseThrow())))
                .isEqualTo(numbers.format(1234567.5).replaceAll("\\p{Z}", "\u00a0"));
        for (int month = 1; month <= 12; month++) {
            LocalDate day = LocalDate.of(2026, month, 3);
            assertThat(formats.day(day)).isEqualTo(DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                    .withLocale(locale).format(day));
        }
    }

    /** With ordinary spaces, which are easier to see in a table. */
    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
