package icequill.einvoice;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.answer.BookedPaper;
import icequill.document.Invoice;
import icequill.document.Totals.EarlyPayment;
import icequill.explain.HowReader;
import icequill.files.paper.PaperJson;
import icequill.money.Amounts;
import icequill.office.billing.CreditOffice;
import icequill.office.billing.CreditOptions;
import icequill.office.billing.IssueOptions;
import icequill.office.billing.RecordOffice;
import icequill.office.billing.VisitBilling;
import icequill.problem.Validated;
import icequill.shop.FormName;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.money.Monetary;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A part for 1,000.00 at 8.875 %, 88.75: 2 % less in 10 days. Off the sum before tax 20.00 go and 1,068.75 are paid; off the total 21.775,
 * hence 21.78; where the tax is due on what is paid only, 980.00 and 86.975, hence 86.98.
 */
@Tag("wide")
class EarlyPaymentTest {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-10T16:00:00Z"), ZoneOffset.UTC);
    private static final Clock LATER = Clock.fixed(Instant.parse("2026-06-25T16:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate DATE = LocalDate.of(2026, 6, 10);

    @TempDir
    Path temporary;

    @ParameterizedTest
    @CsvSource({"net, false, 20.00, 88.75, 1068.75", "gross, false, 21.78, 88.75, 1066.97",
            "net, true, 20.00, 86.98, 1066.98", "gross, true, 20.00, 86.98, 1066.98"})
    void twoPercentInTenDays(String on, boolean reduces, String off, String tax, String enough) throws Exception {
        BookedPaper paper = issued(on, reduces, "");

        Invoice invoice = invoice(paper);
        EarlyPayment early = invoice.totals().early().orElseThrow();
        assertThat(Amounts.plain(invoice.totals().gross())).isEqualTo("1088.75");
        assertThat(early.until()).isEqualTo("2026-06-20");
        assertThat(Amounts.plain(early.off())).isEqualTo(off);
        assertThat(Amounts.plain(early.tax())).isEqualTo(tax);
        assertThat(Amounts.plain(early.gross())).isEqualTo(enough);
        assertThat(HowReader.evaluate(early.how().text(Monetary.getCurrency("USD")))).isEqualByComparingTo(off);
        assertThat(HowReader.evaluate(early.grossHow().text(Monetary.getCurrency("USD"))))
                .isEqualByComparingTo(enough);
        byte[] cii = OfficialRulesTest.cii(invoice);
        assertThat(SchematronRules.CII.faults(cii)).isEmpty();
        assertThat(SchematronRules.UBL_INVOICE.faults(OfficialRulesTest.ubl(invoice))).isEmpty();
        String terms = XmlReader.of(cii).text("SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement/"
                + "SpecifiedTradePaymentTerms/Description");
        String shown = enough.replace("10", "1,0");
        assertThat(terms).contains("Please pay by July 10, 2026.", "If it is paid by June 20, 2026, 2% of the", off,
                shown + " is enough.");
        assertThat(text(paper)).contains("or " + shown + " by June 20, 2026", "2% of the ", shown + " is enough.",
                off);
    }

    /** Whoever has terms of his own has not the shop's; 0 % are none. */
    @ParameterizedTest
    @CsvSource({"5, 1038.75", "0, "})
    void termsOfASheet_insteadOfTheShops(String percent, String enough) throws Exception {
        BookedPaper paper = issued("net", false, percent);

        Invoice invoice = invoice(paper);
        assertThat(invoice.totals().early().map(early -> Amounts.plain(early.gross())))
                .isEqualTo(Optional.ofNullable(enough));
        assertThat(text(paper).contains("is enough.")).isEqualTo(enough != null);
    }

    /** The tenth of June and 9 days to pay are the 19th, and nobody has until the 20th; on the day itself he has. */
    @ParameterizedTest
    @CsvSource({"9, ", "10, 1068.75"})
    void customerWhoHasToPayBefore_isOfferedNothing(String days, String enough) throws Exception {
        BookedPaper paper = issued("net", false, "", shop -> {
            replace(shop.resolve("sites/pennon-wharf-taproom.yaml"), "customer:\n",
                    "customer:\n  paymentDays: " + days + "\n");
            DemoShop.changed(shop);
        });

        assertThat(invoice(paper).totals().early().map(early -> Amounts.plain(early.gross())))
                .isEqualTo(Optional.ofNullable(enough));
    }

    /** Two percent within ten days of an invoice that is due at once are no terms. */
    @Test
    void termsThatNobodyCanUse_areAProblem() throws Exception {
        Path shop = shop("net", false, "", folder -> replace(folder.resolve("shop.yaml"), "paymentDays: 30",
                "paymentDays: 9"));

        assertThat(((Validated.Invalid<?>) VisitBilling.of(shop, CLOCK).issue(new FormName.InBook("part"),
                new IssueOptions(DATE, Optional.empty()))).problems()).anySatisfy(problem -> {
                    assertThat(problem.place().file()).endsWith("adjustments.yaml");
                    assertThat(problem.message())
                            .isEqualTo("early is within 10 days, but an invoice is due after 9");
                    assertThat(problem.allowed()).isEqualTo("at most 9, or more paymentDays in shop.yaml");
                });
    }

    /** Issued anew with the old day to pay it keeps the 20th of June, while that is not past. */
    @ParameterizedTest
    @CsvSource({"2026-06-20, 2026-06-20", "2026-06-21, "})
    void issuedAnew_nothingIsOfferedForADayThatIsPast(LocalDate date, LocalDate until) throws Exception {
        BookedPaper paper = issued("net", false, "");

        List<BookedPaper> papers = CreditOffice.of(temporary.resolve("shop"), LATER).credit(paper.number(),
                new CreditOptions(List.of(), "Wrong order.", date, Optional.of(new CreditOptions.Reissue(
                        Optional.of("PO-2"), Optional.empty(), CreditOptions.Due.KEEP))))
                .orElseThrow();

        assertThat(invoice(papers.getLast()).totals().early().map(EarlyPayment::until))
                .isEqualTo(Optional.ofNullable(until));
    }

    private static Invoice invoice(BookedPaper paper) throws Exception {
        return (Invoice) PaperJson
                .read(new String(PartialCreditBillsTest.enclosed(paper.file(), "paper.json"), UTF_8), "paper.json")
                .orElseThrow();
    }

    private static void replace(Path file, String old, String other) {
        try {
            String text = Files.readString(file);
            assertThat(text).contains(old);
            Files.writeString(file, text.replace(old, other));
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private BookedPaper issued(String on, boolean reduces, String sheet) throws Exception {
        return issued(on, reduces, sheet, shop -> {
        });
    }

    private BookedPaper issued(String on, boolean reduces, String sheet, Consumer<Path> change) throws Exception {
        return VisitBilling.of(shop(on, reduces, sheet, change), CLOCK)
                .issue(new FormName.InBook("part"), new IssueOptions(DATE, Optional.empty())).orElseThrow();
    }

    private Path shop(String on, boolean reduces, String sheet, Consumer<Path> change) throws Exception {
        Path shop = DemoShop.in(temporary.resolve("shop"));
        Path adjustments = shop.resolve("pricing/adjustments.yaml");
        Files.writeString(adjustments, Files.readString(adjustments)
                + "\nearlyPayment: {percent: 2, days: 10, on: " + on + "}\n");
        Path taxes = shop.resolve("pricing/taxes.yaml");
        if (reduces) {
            Files.writeString(taxes, Files.readString(taxes).replace("    state: NY\n",
                    "    state: NY\n    earlyPaymentReducesTax: true\n"));
        }
        if (!sheet.isEmpty()) {
            Files.writeString(shop.resolve("pricing/pennon.yaml"), """
                    format: 1
                    kind: rate-sheet
                    effective: {from: 2026-01-01}
                    id: pennon
                    name: {en: Pennon, es: Pennon}
                    for: {sites: [pennon-wharf-taproom]}
                    earlyPayment: {percent: %s, days: 10, on: net}
                    """.formatted(sheet));
        }
        Path form = Files.writeString(temporary.resolve("part.yaml"), """
                format: 1
                form: sale
                site: pennon-wharf-taproom
                sold: {on: 2026-05-20, way: shipped}
                lines: [{text: rebuilt compressor, class: parts, price: 1000.00, cost: 700.00}]
                """);
        RecordOffice.of(shop, CLOCK).record(FormName.file(form)).orElseThrow();
        change.accept(shop);
        return shop;
    }

    private static String text(BookedPaper paper) throws Exception {
        try (PDDocument pdf = Loader.loadPDF(paper.file().toFile())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
