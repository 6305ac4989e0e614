package icequill.office;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.WrittenPaper;
import icequill.document.RepairQuote;
import icequill.files.paper.PaperJson;
import icequill.money.Amounts;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.problem.Validated;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.shop.FormName;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The float switch that the late call recommended: 75 minutes of a standard morning, and the part. */
class QuoteTest {

    private static final String QUOTE = "quotes/float-switch.yaml";

    @TempDir
    Path temporary;

    private Path folder = Path.of("");

    @BeforeEach
    void shop() {
        folder = temporary.resolve("shop");
        DemoShop.files(folder);
    }

    /**
     * 52.00 + 75 min x 98.00 / 60 = 122.50 + 36.90 and its markup of 50 % = 55.35; in all 229.85, tax 8.875 % = 20.3992. Of
     * 229.85 the deposit of 30 % is 68.955; sales tax comes with the final invoice, so that 250.25 - 68.96 are left.
     */
    @Test
    void quote_plannedRepair_addsUpByHand() throws Exception {
        WrittenPaper paper = quote().orElseThrow();

        assertThat(paper.sums().orElseThrow().plain())
                .containsExactly("229.85", "20.40", "250.25");
        RepairQuote quote = data(paper);
        assertThat(quote.validUntil()).isEqualTo("2026-06-13");
        assertThat(quote.found().orElseThrow().day()).isEqualTo("2026-05-13");
        assertThat(quote.found().orElseThrow().cause().orElseThrow()).startsWith("Float stuck in scale");
        assertThat(Amounts.plain(quote.deposit().orElseThrow().amount())).isEqualTo("68.96");
        assertThat(Amounts.plain(quote.deposit().orElseThrow().rest())).isEqualTo("181.29");
    }

    /**
     * 229.85 in 60 and 40 % is 137.91 and 91.94; a tenth held back 13.79 and 9.19; 8.875 % of 137.91 is 12.24, and of 20.40 8.16
     * are left: 137.91 + 12.24 - 13.79 = 136.36; 91.94 + 8.16 - 9.19 = 90.91; released 22.98; together 250.25.
     */
    @Test
    void quote_inStages_saysWhatIsPaidWhenAndWhatIsHeldBack() throws Exception {
        Path file = folder.resolve(QUOTE);
        Files.writeString(file, Files.readString(file).replace("deposit: 30", "stages: [60, 40]\n  retainage: 10"));

        WrittenPaper paper = quote().orElseThrow();

        RepairQuote quote = data(paper);
        assertThat(quote.deposit()).isEmpty();
        assertThat(quote.parts().orElseThrow().stages()).extracting(stage -> Amounts.plain(stage.net()) + " "
                + Amounts.plain(stage.tax()) + " " + Amounts.plain(stage.held()) + " " + Amounts.plain(stage.due()))
                .containsExactly("137.91 12.24 13.79 136.36", "91.94 8.16 9.19 90.91", "0.00 0.00 -22.98 22.98");
        assertThat(PrintedQuote.of(paper.files().getFirst()).flowing()).contains("How it is paid", "Held back",
                "136.36", "90.91", "22.98", "60% of the whole, with its tax");
    }

    @Test
    void quote_numbered_carriesAQuotation() throws Exception {
        WrittenPaper paper = DemoShop.office(folder)
                .quote(FormName.file(folder.resolve(QUOTE)), new PaperOptions(Optional.of("Q-7"),
                        LocalDate.of(2026, 5, 14), Optional.empty(), new Extras(false, true, false)))
                .orElseThrow();

        assertThat(paper.files()).extracting(file -> file.getFileName().toString()).containsExactly(
                "draft-quote-float-switch.pdf", "draft-quote-float-switch.xml");
        assertThat(Files.readString(paper.files().getLast())).contains("<cbc:PayableAmount currencyID=\"USD\">250.25<");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "machine: back-bar | machine: back-bra | UNKNOWN_NAME | did you mean \"back-bar\"",
            "the reed is worn. | the reed is torn. | UNKNOWN_NAME | there is no recommended repair",
            "visit: late-call | visit: spring-cleaning-bakery | NOT_ALLOWED | that visit was at crumb-lane-bakery",
            "visit: late-call | visit: never | UNKNOWN_NAME | never", "deposit: 30 | deposit: 130 | OUT_OF_RANGE | 130",
            "deposit: 30 | stages: [40, 40, 30] | OUT_OF_RANGE | the stages add up to 110 % (100 % together)",
            "holdsDays: 30 | stages: [50, 50] | NOT_ALLOWED | a deposit, and stages too",
            "holdsDays: 30 | retainage: 10 | NOT_ALLOWED | something is held back, but nothing says of which payments",
            "deposit: 30 | stages: [100] | MISSING | stages",
            "quote: | quotes: | UNKNOWN_KEY | quotes"})
    void quote_wrongRequest_saysWhat(String from, String to, Code code, String message) throws Exception {
        Path file = folder.resolve(QUOTE);
        Files.writeString(file, Files.readString(file).replace(from, to));

        List<Problem> problems = quote().problems();

        assertThat(problems).extracting(Problem::code).contains(code);
        assertThat(problems.stream().map(Problem::text)).anyMatch(text -> text.contains(message));
        assertThat(folder.resolve("papers")).doesNotExist();
    }

    @Test
    void quote_ofAVisitThatIsNone_saysWhatToAdd() {
        List<Problem> problems = DemoShop.office(folder)
                .quote(FormName.file(folder.resolve("visits/late-call.yaml")), paperOptions())
                .problems();

        assertThat(problems).extracting(Problem::message).containsExactly("\"quote\" is missing");
    }

    private Validated<WrittenPaper> quote() {
        return DemoShop.office(folder).quote(FormName.file(folder.resolve(QUOTE)), paperOptions());
    }

    private static PaperOptions paperOptions() {
        return new PaperOptions(Optional.empty(), LocalDate.of(2026, 5, 14), Optional.empty(), Extras.NONE);
    }

    private static RepairQuote data(WrittenPaper paper) throws Exception {
        try (PDDocument document = Loader.loadPDF(paper.files().getFirst().toFile())) {
            byte[] json = document.getDocumentCatalog().getNames().getEmbeddedFiles().getNames().values().iterator()
                    .next().getEmbeddedFile().toByteArray();
            return (RepairQuote) PaperJson.read(new String(json, StandardCharsets.UTF_8), "paper.json").orElseThrow();
        }
    }
}
