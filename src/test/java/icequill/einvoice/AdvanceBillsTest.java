package icequill.einvoice;

import static org.assertj.core.api.Assertions.assertThat;

import icequill.DemoShop;
import icequill.document.Bill;
import icequill.document.Invoice;
import icequill.document.Invoice.AdvanceBill;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;
import icequill.money.Percent;
import icequill.papers.InvoiceAssembly;
import icequill.papers.RepairQuoteAssembly;
import icequill.papers.StageAssembly;
import icequill.party.Language;
import icequill.party.TaxBasis;
import icequill.problem.Place;
import icequill.request.Extras;
import icequill.request.PaperOptions;
import icequill.visits.VisitContext;
import icequill.work.Proposal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Invoices of parts of a repair, and of the whole after them, by the official rules: the late call, 276.58, as if it had been quoted. */
class AdvanceBillsTest {

    @TempDir
    private Path folder;

    /** 30 % of 276.58 is 82.974, 19 % of 82.97 15.7643; 276.58 and 52.55 less 82.97 and 15.76 are 193.61 and 36.79. */
    @Test
    void depositWithVat_isAPrepaymentInvoice_takenOffWithItsTax() throws Exception {
        VisitContext hand = hand("hafenland");
        StageInvoice deposit = part(hand, quote(hand, "30", List.of(), Percent.ZERO), 1);

        XmlReader first = ubl(deposit);
        XmlReader last = ubl(whole(hand, List.of(deposit)));

        assertThat(first.text("InvoiceTypeCode")).isEqualTo("386");
        assertThat(first.text("LegalMonetaryTotal/PayableAmount")).isEqualTo("98.73");
        assertThat(last.text("InvoiceTypeCode")).isEqualTo("380");
        assertThat(last.text("BillingReference/InvoiceDocumentReference/ID")).isEqualTo("INV-1");
        assertThat(last.texts("InvoiceLine/LineExtensionAmount")).containsExactly("52.00", "65.33", "159.25",
                "-82.97");
        assertThat(last.text("TaxTotal/TaxAmount")).isEqualTo("36.79");
        assertThat(last.text("LegalMonetaryTotal/PayableAmount")).isEqualTo("230.40");
    }

    /** A deposit, and two parts with a tenth held back, each with the invoice of the work after it. */
    @ParameterizedTest
    @CsvSource({"hafenland", "alder-county", "palma-county"})
    void everyPart_andTheWhole_areValid(String place) throws Exception {
        VisitContext hand = hand(place);
        RepairQuote deposited = quote(hand, "30", List.of(), Percent.ZERO);
        RepairQuote inParts = quote(hand, "0", List.of(Percent.of("60"), Percent.of("40")), Percent.of("10"));
        List<StageInvoice> parts = List.of(part(hand, inParts, 1), part(hand, inParts, 2));
        List<Bill> bills = new ArrayList<>(parts);
        bills.add(part(hand, deposited, 1));
        bills.add(new StageAssembly(inParts, "RQ-1", hand.site()).invoice(3, parts, options(3)).orElseThrow());
        bills.add(whole(hand, List.of(part(hand, deposited, 1))));
        bills.add(whole(hand, parts.subList(0, 1)));

        for (Bill bill : bills) {
            PricedBillsTest.assertRight(bill, SchematronRules.UBL_INVOICE);
        }
    }

    private static XmlReader ubl(Bill bill) throws Exception {
        return XmlReader.of(OfficialRulesTest.ubl(bill));
    }

    private VisitContext hand(String place) throws Exception {
        DemoShop.files(folder);
        return PricedBillsTest.context(DemoShop.read(folder), folder.resolve("visits/late-call.yaml"), place,
                TaxBasis.INVOICE);
    }

    private static RepairQuote quote(VisitContext hand, String deposit, List<Percent> stages, Percent retainage) {
        return new RepairQuoteAssembly(hand, new Proposal("back-bar", "The float.", Optional.empty(),
                Percent.of(deposit), stages, retainage, 30, Place.NOWHERE),
                hand.site().machine("back-bar").orElseThrow(),
                Optional.empty(), hand.site().billTo(LocalDate.of(2026, 5, 14)).orElseThrow(), Language.ENGLISH)
                .quote(Optional.of("RQ-1"), LocalDate.of(2026, 5, 14));
    }

    private static StageInvoice part(VisitContext hand, RepairQuote quote, int part) {
        return new StageAssembly(quote, "RQ-1", hand.site()).invoice(part, List.of(), options(part)).orElseThrow();
    }

    private static Invoice whole(VisitContext hand, List<StageInvoice> parts) {
        List<AdvanceBill> before = parts.stream().map(part -> InvoiceAssembly.before(part, List.of())).toList();
        return InvoiceAssembly.of(hand, before, options(9)).orElseThrow();
    }

    private static PaperOptions options(int number) {
        return new PaperOptions(Optional.of("INV-" + number), LocalDate.of(2026, 12, 30), Optional.empty(),
                Extras.NONE);
    }
}
