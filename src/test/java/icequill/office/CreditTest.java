package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Credits of the late call: 52.00 + 65.33 + 159.25 = 276.58, taxed at 8.875 %: 24.55. */
class CreditTest {

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    @Test
    void credit_wholeInvoice_isItsSumAndTax() throws Exception {
        assertSums(credit(""), "-276.58", "-24.55", "-301.13");
    }

    /** 159.25 x 8.875 % = 14.1334; what is left of 24.55 goes back with the rest. */
    @Test
    void credit_inTwoParts_theLastTakesWhatTaxIsLeft() throws Exception {
        assertSums(credit("lines: [3]"), "-159.25", "-14.13", "-173.38");
        assertSums(credit("lines: [1, 2]\ncreditedBefore: [3]"), "-117.33", "-10.42", "-127.75");
        assertSums(credit("creditedBefore: [3]"), "-117.33", "-10.42", "-127.75");
    }

    /** 52.00 and 65.33 at 8.875 %: 4.615 and 5.798, one note each; 4.62 + 5.80 leave 14.13 of 24.55. */
    @Test
    void credit_afterTwoNotes_eachGaveItsOwnTax() throws Exception {
        assertSums(credit("creditedBefore: [[1], [2]]"), "-159.25", "-14.13", "-173.38");
        assertSums(credit("creditedBefore: [[3], [2]]"), "-52.00", "-4.62", "-56.62");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"creditedBefore: [[]] | MISSING | nothing is listed here",
            "creditedBefore: [[1], [1]] | DUPLICATE_NAME | line 1 is credited twice",
            "creditedBefore: [one] | WRONG_TYPE | or the lines of one earlier credit note",
            "lines: [4] | OUT_OF_RANGE | the invoice has no line 4",
            "lines: [2, 2] | DUPLICATE_NAME | line 2 is credited twice",
            "{lines: [1], creditedBefore: [1]} | DUPLICATE_NAME | line 1 is credited twice",
            "creditedBefore: [1, 2, 3] | NOT_ALLOWED | every line has been credited already",
            "creditedBefore: [9] | OUT_OF_RANGE | the invoice has no line 9",
            "lines: [0] | OUT_OF_RANGE | found the number 0", "line: [1] | UNKNOWN_KEY | line"})
    void credit_wrongLines_saysWhich(String text, Code code, String message) throws Exception {
        String lines = text.startsWith("{") ? text.substring(1, text.length() - 1).replace("], ", "]\n") : text;

        List<Problem> problems = written(lines).problems();

        assertThat(problems).extracting(Problem::code).containsExactly(code);
        assertThat(problems.getFirst().text()).contains(message);
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    /** Each of the earlier notes and the new one, where it stands. */
    @Test
    void credit_severalNotesWrong_oneReportOfAll() throws Exception {
        List<Problem> problems = written("lines: [9, 3]\ncreditedBefore: [[3], [7, 1], [3], [2]]\namount: 500")
                .problems();

        assertThat(problems).extracting(Problem::text).containsExactly(
                "credits/test.yaml:7: amount: there is no key \"amount\" here"
                        + " (allowed: creditedBefore, form, format, id, invoice, lines, reason, visit)");
        assertThat(written("lines: [9, 3]\ncreditedBefore: [[3], [7, 1], [3], [2]]").problems())
                .extracting(Problem::text).containsExactly(
                        "credits/test.yaml:6: creditedBefore: the invoice has no line 7 (a line from 1 to 3)",
                        "credits/test.yaml:6: creditedBefore: line 3 is credited twice"
                                + " (each line once, and none that was credited before)",
                        "credits/test.yaml:5: lines: the invoice has no line 9 (a line from 1 to 3)",
                        "credits/test.yaml:5: lines: line 3 is credited twice"
                                + " (each line once, and none that was credited before)");
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void credit_visitThatIsNotThere_isAProblem() throws Exception {
        Files.delete(folder.resolve("visits/late-call.yaml"));

        assertThat(written("").problems()).extracting(Problem::code).contains(Code.UNREADABLE);
    }

    private WrittenPaper credit(String lines) throws Exception {
        return written(lines).orElseThrow();
    }

    private Validated<WrittenPaper> written(String lines) throws Exception {
        Path file = folder.resolve("credits/test.yaml");
        Files.writeString(file, """
                format: 1
                invoice: {number: 2026-0107, date: 2026-05-13}
                visit: visits/late-call.yaml
                reason: Charged twice.
                """ + lines);
        return DemoShop.office(folder).credit(FormName.file(file),
                new PaperOptions(Optional.empty(), LocalDate.of(2026, 6, 1), Optional.empty(), Extras.NONE));
    }

    private static void assertSums(WrittenPaper paper, String net, String tax, String gross) {
        assertThat(paper.sums().orElseThrow().plain()).containsExactly(net, tax, gross);
    }
}
