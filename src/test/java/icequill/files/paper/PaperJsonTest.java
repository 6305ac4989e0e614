package icequill.files.paper;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Paper;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.render.InvoiceFixture;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperJsonTest {

    @ParameterizedTest
    @CsvSource({"en, USD, US", "es, EUR, ES", "en, KWD, KW"})
    void read_whatWasWritten_isTheSamePaper(Language language, String currency, String country) {
        for (Paper paper : InvoiceFixture.of(language, PaperSize.A4, currency, country).withLines(5).papers()) {
            String json = PaperJson.write(paper);
            Paper read = PaperJson.read(json, "paper.json").orElseThrow();

            assertThat(read).isEqualTo(paper);
            assertThat(PaperJson.write(read)).isEqualTo(json);
            assertThat(PaperJson.compact(paper)).doesNotContain("\n");
            assertThat(PaperJson.read(PaperJson.compact(paper), "book").orElseThrow()).isEqualTo(paper);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "{\"format\": 1}", "{\"format\": 1, \"paper\": {\"is\": \"Secret\"}}",
            "{\"format\": 1, \"paper\": {\"is\": \"Invoice\", \"number\": 7}}"})
    void read_somethingElse_isAProblem(String json) {
        assertThat(PaperJson.read(json, "paper.json").problems()).extracting(Problem::code)
                .containsExactly(Code.UNREADABLE);
    }
}
