package icequill.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.party.Language;
import icequill.problem.Code;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers and times as people type them. */
class TypedTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"12.50 | 12.50", "12,5 | 12.5", "1,200.00 | 1200.00", "1.200,00 | 1200.00",
            "1 200,00 | 1200.00", "1250 | 1250", "0,1234 | 0.1234"})
    void number_inEitherForm_isRead(String text, BigDecimal number) {
        assertThat(TypedNumber.of(text, "amount").orElseThrow()).isEqualTo(number);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,200", "1.200", "12,345.678,90", "-5", "five", "1e3", ""})
    void number_ofTwoMeaningsOrNone_isAsked(String text) {
        assertThat(TypedNumber.of(text, "amount").problems()).singleElement()
                .satisfies(problem -> assertThat(problem.place().path()).isEqualTo("amount"))
                .satisfies(problem -> assertThat(problem.allowed()).isNotEmpty());
    }

    @ParameterizedTest
    @CsvSource({"9:15,09:15", "915,09:15", "9,09:00", "16:20,16:20", "4:20 pm,16:20", "4:20PM,16:20", "12 am,00:00",
            "12 p.m.,12:00", "16.20,16:20"})
    void time_isRead(String text, LocalTime time) {
        assertThat(TypedMoment.time(text, "from").orElseThrow().time()).isEqualTo(time);
    }

    @ParameterizedTest
    @ValueSource(strings = {"25:00", "9:75", "13 pm", "0 am", "noon", "-1"})
    void time_thatIsNone_isAsked(String text) {
        assertThat(TypedMoment.time(text, "from").problems()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"2026-05,2026-05", "5/2026,2026-05", "05-2026,2026-05", "2026/5,2026-05", "May 2026,2026-05",
            "mayo de 2026,2026-05", "MAYO 2026,2026-05", "sept. 2026,2026-09", "ene 2026,2026-01",
            "m\u00e4rz 2026,2026-03",
            "May,2026-05", "abril,2026-04", "jun,2025-06", "13/2026,2026-13", "spring 2026,spring 2026", "soon,soon",
            "2026,2026"})
    void month_isRead_andWhatIsNoneIsLeftToTheOffice(String text, String month) {
        assertThat(TypedMonth.text(text, LocalDate.of(2026, 5, 20))).isEqualTo(month);
    }

    private static Reader reader(String language, String country) {
        return new Reader(Sentences.of(Language.ofTag(language).orElseThrow(), country), ZoneOffset.UTC,
                LocalDate.of(2026, 5, 20), "");
    }

    /** Worked with a calendar: 20 May 2026 is a Wednesday. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"en | US | 2026-05-14 | 2026-05-14", "en | US | 2026/5/4 | 2026-05-04",
            "en | US | today | 2026-05-20", "en | US | Yesterday | 2026-05-19", "en | US | hoy | 2026-05-20",
            "es | US | hoy | 2026-05-20", "es | US | ayer | 2026-05-19", "es | US | ma\u00f1ana | 2026-05-21",
            "en | US | 13 May | 2026-05-13", "en | US | May 13 | 2026-05-13", "en | US | 13may | 2026-05-13",
            "en | US | 13th of May, 2025 | 2025-05-13", "en | US | Sept. 3, 2026 | 2026-09-03",
            "es | US | 13 mayo | 2026-05-13", "es | MX | 13 de mayo de 2027 | 2027-05-13",
            "es | MX | 1o de junio | 2026-06-01",
            "en | US | 5/13 | 2026-05-13", "en | US | 13/5/2026 | 2026-05-13", "en | US | 5/6/2026 | 2026-05-06",
            "en | US | 6/5/26 | 2026-06-05", "en | US | 5-5 | 2026-05-05", "es | US | 13/5/2026 | 2026-05-13",
            "es | MX | 5/6/2026 | 2026-06-05", "en | GB | 5.6. | 2026-06-05", "en | GB | 5/13 | 2026-05-13",
            "en | US | 2/19 | 2026-02-19", "en | US | 8/19 | 2026-08-19"})
    void day_isRead(String language, String country, String text, LocalDate day) {
        assertThat(TypedDay.of(text, reader(language, country), "day").orElseThrow()).isEqualTo(day);
    }

    /** Spanish has the day first, its country the month; the English of Canada and its CLDR differ; 92 days and more are too far to guess. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"es | US | 5/6/2026", "en | CA | 5/6/2026", "en | US | 12/30",
            "en | US | 2/17",
            "en | US | 8/20", "en | US | 30 diciembre"})
    void day_ofTwoMeanings_isAsked(String language, String country, String text) {
        assertThat(TypedDay.of(text, reader(language, country), "day").problems()).singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.NOT_ALLOWED))
                .satisfies(problem -> assertThat(problem.place().path()).isEqualTo("day"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "13", "May", "31 June", "2/29/2027", "2026-02-30", "13/14/2026", "ma 3", "soon",
            "13 May 26 x",
            "0/5", "32/1/2026"})
    void day_thatIsNone_isAsked(String text) {
        assertThat(TypedDay.of(text, reader("en", "US"), "day").problems()).singleElement()
                .satisfies(problem -> assertThat(problem.code()).isEqualTo(Code.WRONG_TYPE));
    }
}
