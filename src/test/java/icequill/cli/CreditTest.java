package icequill.cli;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.ledger.Database;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** Credits of the late call: 52.00 + 65.33 + 159.25 = 276.58, taxed at 8.875 %: 24.55. */
@Tag("wide")
class CreditTest {

    @TempDir
    Path temporary;

    private BookShop shop = new BookShop(Path.of(""));

    @BeforeEach
    void issued() throws IOException {
        shop = BookShop.in(temporary.resolve("shop"), Database.SQLITE);
        shop.issue("late-call", "2026-05-14");
    }

    @Test
    void credit_wholeInvoice_isItsSumAndTax() throws IOException {
        assertSums(credit(), "276.58", "24.55", "-301.13");
    }

    /** 159.25 x 8.875 % = 14.1334; what is left of 24.55 goes back with the rest. */
    @Test
    void credit_inTwoParts_theLastTakesWhatTaxIsLeft() throws IOException {
        assertSums(credit("--lines", "3"), "159.25", "14.13", "-173.38");
        assertSums(credit(), "117.33", "10.42", "-127.75");
    }

    /** 52.00 and 65.33 at 8.875 %: 4.615 and 5.798, one note each; 4.62 + 5.80 leave 14.13 of 24.55. */
    @Test
    void credit_afterTwoNotes_eachGaveItsOwnTax() throws IOException {
        credit("--lines", "1");
        credit("--lines", "2");
        assertSums(credit("--lines", "3"), "159.25", "14.13", "-173.38");
    }

    @Test
    void credit_afterTwoOthers_eachGaveItsOwnTax() throws IOException {
        credit("--lines", "3");
        credit("--lines", "2");
        assertSums(credit("--lines", "1"), "52.00", "4.62", "-56.62");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"4 | the invoice has no line 4 (a line from 1 to 3)",
            "0 | the invoice has no line 0", "2,2 | line 2 is credited twice", "1 | line 1 is credited twice"})
    void credit_wrongLines_saysWhich(String lines, String message) throws IOException {
        credit("--lines", "1");

        assertThat(shop.problems("credit", "issue", "INV-2026-00001", "--reason", "Charged twice.", "--date",
                "2026-06-01", "--lines", lines)).singleElement().asString().contains(message);
        assertThat(shop.json("audit").path("papers").asInt()).isEqualTo(2);
    }

    @Test
    void credit_severalLinesWrong_oneReportOfAll() throws IOException {
        credit("--lines", "3");

        assertThat(shop.problems("credit", "issue", "INV-2026-00001", "--reason", "x", "--date", "2026-06-01",
                "--lines", "9,3")).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({"INV-2026-00001", "1", "inv 2026 1", "papers/issued/INV-2026-00001.pdf"})
    void credit_ofAnInvoiceHoweverItIsNamed_isTheSame(String name) {
        assertThat(shop.json("credit", "issue", name, "--reason", "Charged twice.", "--date", "2026-06-01")
                .at("/papers/0/corrects").asString()).isEqualTo("INV-2026-00001");
    }

    private JsonNode credit(String... options) {
        String[] line = new String[7 + options.length];
        System.arraycopy(new String[]{"credit", "issue", "INV-2026-00001", "--reason", "Charged twice.", "--date",
                "2026-06-01"}, 0, line, 0, 7);
        System.arraycopy(options, 0, line, 7, options.length);
        return shop.json(line).path("papers").get(0);
    }

    private void assertSums(JsonNode note, String net, String tax, String gross) {
        assertThat(note.path("gross").asString()).isEqualTo(gross);
        String shown = shop.run("credit", "show", note.path("number").asString()).out();
        assertThat(shown).as(shown).contains("-" + net, gross);
        assertThat(new BigDecimal(net).add(new BigDecimal(tax))).isEqualTo(new BigDecimal(gross).negate());
    }
}
