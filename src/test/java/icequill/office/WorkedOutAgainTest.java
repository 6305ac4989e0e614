package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.party.Language;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a customer who works his invoice out again needs, and finds on it. */
class WorkedOutAgainTest {

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /** Clocks in New York went forward on 8 March 2026 and go back on 1 November 2026, both at two. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "en | 2026-03-08T01:30 | 2026-03-08T03:30 | the clocks went forward: 1 h 0 min passed, 2 h 0 min by the clock's count",
            "en | 2026-10-31T23:00 | 2026-11-01T02:50 | the clocks went back: 4 h 50 min passed, 3 h 50 min by the clock's count",
            "es | 2026-10-31T23:00 | 2026-11-01T02:50 | los relojes se atrasaron: pasaron 4 h 50 min, 3 h 50 min según el reloj"})
    void clocksChanged_isToldOnInvoiceAndRecord(String language, String arrived, String left, String told)
            throws IOException {
        Path visit = folder.resolve("visits/clock-change.yaml");
        Files.writeString(visit, Files.readString(visit).replace("2026-03-08T01:30", arrived)
                .replace("2026-03-08T03:30", left).replace("2026-03-08T00:35", "2026-03-07T00:35"));

        assertThat(invoice("clock-change", language)).contains(told);
        assertThat(text(DemoShop.office(folder).record(FormName.file(visit), options(language)).orElseThrow()))
                .contains(told);
    }

    @Test
    void clocksUnchanged_nothingIsTold() throws IOException {
        assertThat(invoice("late-call", "en")).doesNotContain("the clocks went");
    }

    /** 40 of 110 minutes each were standard; 10 each were added to reach 120: 100 x 98 / 60 = 163.33, 140 x 147 / 60 = 343.00. */
    @Test
    void twoPeople_theirMinutesAddUpToWhatIsBilled() throws IOException {
        assertThat(invoice("two-leads-hotel", "en")).contains("100 min 98.00/h 163.33",
                "2 people, their minutes added up: 50 min, 50 min", "140 min 147.00/h 343.00",
                "2 people, their minutes added up: 70 min, 70 min");
    }

    @ParameterizedTest
    @CsvSource({"en, its share of the discount", "es, su parte del descuento"})
    void discountOnTheDocument_sharesOfTheLinesAddUpToIt(String language, String share) throws IOException {
        String text = invoice("packs-and-discount-mercado", language);

        BigDecimal discount = sum(text, "[-\u2212](?<amount>[0-9.,]+) (?:Total before tax|Total antes de impuestos)");
        assertThat(discount).isPositive();
        assertThat(sum(text, share + " (?<amount>[0-9]+[.,][0-9]{2})")).isEqualByComparingTo(discount);
    }

    @ParameterizedTest
    @CsvSource({"en, split so that the parts add up", "es, repartido para que las partes sumen"})
    void partsOfATax_saySoWhenSplit(String language, String split) throws IOException {
        assertThat(invoice("late-call", language)).contains("276.58, " + split);
    }

    private static BigDecimal sum(String text, String pattern) {
        List<String> amounts = Pattern.compile(pattern).matcher(text).results()
                .map(WorkedOutAgainTest::amount).toList();
        assertThat(amounts).as(pattern).isNotEmpty();
        return amounts.stream().map(BigDecimal::new).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static String amount(MatchResult found) {
        return found.group("amount").replace(",", "");
    }

    private String invoice(String visit, String language) throws IOException {
        return text(DemoShop.office(folder)
                .invoice(FormName.file(folder.resolve("visits/" + visit + ".yaml")), options(language))
                .orElseThrow());
    }

    private static String text(WrittenPaper paper) throws IOException {
        return PrintedQuote.of(paper.files().getFirst()).flowing();
    }

    private static PaperOptions options(String language) {
        return new PaperOptions(Optional.empty(), LocalDate.of(2026, 12, 1), Language.ofTag(language), Extras.NONE);
    }
}
