package icequill.einvoice;

import static icequill.einvoice.OfficialRulesTest.cii;
import static icequill.einvoice.OfficialRulesTest.ubl;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Bill;
import icequill.document.InvoiceLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the official rules leave out: each line is price by base quantity times quantity, rounded to cents, less its allowance;
 * worked out again from the XML alone.
 */
class LineArithmeticTest {

    /** A line as its reader sees it. */
    record Read(BigDecimal price, BigDecimal base, BigDecimal quantity, BigDecimal allowances, BigDecimal charges,
            BigDecimal net) {

        BigDecimal worked() {
            // One division at the end, at far more digits than any amount has.
            return price.multiply(quantity).divide(base, 30, RoundingMode.HALF_UP).setScale(2, RoundingMode.HALF_UP)
                    .subtract(allowances).add(charges);
        }
    }

    static Stream<Arguments> bills() {
        return OfficialRulesTest.bills();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void ubl_everyLine_worksOut(String name, Bill bill) throws Exception {
        List<Read> lines = readUbl(ubl(bill));

        assertThat(lines).as(name).hasSize(billed(bill))
                .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void cii_everyLine_worksOut(String name, Bill bill) throws Exception {
        List<Read> lines = readCii(cii(bill));

        assertThat(lines).as(name).hasSize(billed(bill))
                .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
    }

    @Test
    void labor_minutes_areNeverRoundedToHours() throws Exception {
        XmlReader line = XmlReader.of(ubl(Bills.laborAcrossBands())).all("InvoiceLine").get(1);

        assertThat(line.text("InvoicedQuantity")).isEqualTo("40");
        assertThat(line.text("InvoicedQuantity/@unitCode")).isEqualTo("MIN");
        assertThat(line.text("Price/PriceAmount")).isEqualTo("98.00");
        assertThat(line.text("Price/BaseQuantity")).isEqualTo("60");
        assertThat(line.text("Price/BaseQuantity/@unitCode")).isEqualTo("MIN");
        assertThat(line.text("LineExtensionAmount")).isEqualTo("65.33");
    }

    @Test
    void halfOfALine_isOneLumpSum() throws Exception {
        XmlReader line = XmlReader.of(ubl(Bills.lastHalfCredit())).all("CreditNoteLine").getFirst();

        assertThat(line.text("CreditedQuantity")).isEqualTo("1");
        assertThat(line.text("CreditedQuantity/@unitCode")).isEqualTo("LS");
        assertThat(line.text("Price/PriceAmount")).isEqualTo("36.75");
    }

    @Test
    void notCharged_oneHundredPercentAllowanceWithReasonAndCode() throws Exception {
        List<XmlReader> lines = XmlReader.of(ubl(Bills.includedAndWarranty())).all("InvoiceLine");

        assertThat(lines).hasSize(5);
        assertThat(lines.stream().map(line -> line.text("AllowanceCharge/AllowanceChargeReasonCode")))
                .containsExactly("64", "100", "65", "100", "95");
        assertThat(lines.stream().map(line -> line.text("Note"))).containsExactly("Included in your agreement",
                "Under warranty, no charge to you", "Our own work put right, no charge", "Goodwill, no charge", "");
        assertThat(lines.getLast().text("AllowanceCharge/AllowanceChargeReason")).isEqualTo("loyalty, 10% off");
        assertThat(lines.getFirst().text("AllowanceCharge/Amount")).isEqualTo("52.00");
    }

    static List<Read> readUbl(byte[] xml) throws Exception {
        XmlReader root = XmlReader.of(xml);
        List<XmlReader> lines = new ArrayList<>(root.all("InvoiceLine"));
        lines.addAll(root.all("CreditNoteLine"));
        return lines.stream()
                .map(line -> new Read(line.number("Price/PriceAmount", ""), line.number("Price/BaseQuantity", "1"),
                        line.number("InvoicedQuantity", line.text("CreditedQuantity")), adjusted(line, "false"),
                        adjusted(line, "true"), line.number("LineExtensionAmount", "")))
                .toList();
    }

    private static BigDecimal adjusted(XmlReader line, String charge) {
        return line.all("AllowanceCharge").stream().filter(one -> one.text("ChargeIndicator").equals(charge))
                .map(one -> one.number("Amount", "")).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<Read> readCii(byte[] xml) throws Exception {
        String price = "SpecifiedLineTradeAgreement/NetPriceProductTradePrice/";
        String settlement = "SpecifiedLineTradeSettlement/";
        return XmlReader.of(xml).all("SupplyChainTradeTransaction/IncludedSupplyChainTradeLineItem").stream()
                .map(line -> new Read(line.number(price + "ChargeAmount", ""),
                        line.number(price + "BasisQuantity", "1"),
                        line.number("SpecifiedLineTradeDelivery/BilledQuantity", ""),
                        line.number(settlement + "SpecifiedTradeAllowanceCharge/ActualAmount", "0"), BigDecimal.ZERO,
                        line.number(settlement + "SpecifiedTradeSettlementLineMonetarySummation/LineTotalAmount", "")))
                .toList();
    }

    private static int billed(Bill bill) {
        return (int) bill.lines().stream().map(InvoiceLine::outcome).filter(outcome -> outcome.isDone()).count();
    }
}
