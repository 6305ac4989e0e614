package icequill.einvoice;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import icequill.document.Bill;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.mustangproject.ZUGFeRD.TransactionCalculator;
import org.mustangproject.ZUGFeRD.ZUGFeRDInvoiceImporter;

/**
 * Another program's importer reads our bills as CII, works the totals out again from the lines, and refuses what differs from the
 * total that is written.
 */
class ImporterTest {

    /**
     * A tax rounded to whole yen, and the last of several credits, whose tax is what the others left, are no product of base and
     * rate to the cent; the importer knows neither.
     */
    private static final Set<String> TAXES_OF_THEIR_OWN = Set.of("yen", "yen of labor", "last half credit");

    static Stream<Arguments> bills() {
        return Bills.all().entrySet().stream().filter(bill -> !TAXES_OF_THEIR_OWN.contains(bill.getKey()))
                .map(bill -> Arguments.of(bill.getKey(), bill.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void everyKindOfBill_comesToTheSameTotal(String name, Bill bill) throws Exception {
        assertThat(total(OfficialRulesTest.cii(bill))).as(name)
                .isEqualByComparingTo(Amounts.number(bill.totals().gross()));
    }

    /** Of these the lines agree still, and so does what is taxed. */
    @Test
    void yen_linesAgree_onlyTheTaxIsWhole() {
        for (Map.Entry<String, String> bill : Map.of("yen", "12345.00", "yen of labor", "8179.00").entrySet()) {
            byte[] xml = OfficialRulesTest.cii(Bills.all().getOrDefault(bill.getKey(), Bills.yen()));

            assertThatThrownBy(() -> total(xml)).hasMessageContaining(
                    "tax basis " + bill.getValue() + " and with positions " + bill.getValue() + " = "
                            + bill.getValue());
        }
    }

    /** The importer does look: the official rules let this wrong price pass. */
    @Test
    void wrongPrice_isRefused() {
        String xml = new String(OfficialRulesTest.cii(Bills.laborAcrossBands()), UTF_8)
                .replace("<ram:ChargeAmount>98.00", "<ram:ChargeAmount>99.00");

        assertThat(SchematronRules.CII.ids(xml.getBytes(UTF_8))).isEmpty();
        assertThatThrownBy(() -> total(xml.getBytes(UTF_8))).isInstanceOf(ArithmeticException.class);
    }

    /** What the importer makes of the lines; an {@link ArithmeticException} where that is not what the bill says. */
    static BigDecimal total(byte[] xml) throws Exception {
        ZUGFeRDInvoiceImporter importer = new ZUGFeRDInvoiceImporter();
        importer.fromXML(new String(xml, UTF_8));
        return new TransactionCalculator(importer.extractInvoice()).getGrandTotal();
    }
}
