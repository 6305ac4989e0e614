package icequill.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalTime;
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
            "13/2026,2026-13", "spring 2026,spring 2026", "soon,soon", "2026,2026"})
    void month_isRead_andWhatIsNoneIsLeftToTheOffice(String text, String month) {
        assertThat(TypedMonth.text(text)).isEqualTo(month);
    }
}
