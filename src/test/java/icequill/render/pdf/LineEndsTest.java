package icequill.render.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.party.Language;
import icequill.render.words.DateForms;
import icequill.render.words.Words;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineEndsTest {

    /** Each bar stands where a line may end; nothing else is torn. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"en; Please |write |INV-2026-00012 |on |it",
            "en; due |December 1, 2026, |or |14 May 2026", "en; call |555-0142 |now",
            "en; Account |0042 7711 |and |+34 600 123 456 |too", "en; cord-|and-|plug |machines",
            "en; serial |QD-350-1182 |of |1,250.00 |each", "en; in |May |we |come",
            "en; from |8:00 AM; |at |16:30 |too", "es; a |las |7:00 a.\u00a0m.; |a |otra |hora",
            "es; el |1 de mayo de 2027 |y |el |4 de noviembre de 2026.", "es; pagar |5 |de |6 |pagos"})
    void lineEnds_datesAndNumbers_areNotTorn(Language language, String marked) {
        List<Integer> expected = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        for (String part : marked.split("\\|", -1)) {
            text.append(part);
            expected.add(text.length());
        }

        assertThat(new LineEnds(new DateForms(Words.of(language))).of(text.toString())).isEqualTo(expected);
    }
}
