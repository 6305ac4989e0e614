package icequill.einvoice;

import static icequill.einvoice.OfficialRulesTest.WORDING;
import static org.assertj.core.api.Assertions.assertThat;

import com.helger.diagnostics.error.list.ErrorList;
import com.helger.jaxb.GenericJAXBMarshaller;
import com.helger.ubl21.UBL21Marshaller;
import icequill.document.Bill;
import icequill.document.Invoice;
import icequill.party.SalesTaxEncoding;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Sales tax as it is: good UBL 2.1, with each authority's part, and not what EN 16931 takes. */
class PlainSalesTaxTest {

    private static byte[] plain(Bill bill) {
        return EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).orElseThrow();
    }

    static Stream<Arguments> bills() {
        return Bills.withSalesTax().entrySet().stream().map(entry -> Arguments.of(entry.getKey(), entry.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void plain_everyKindOfBill_isGoodUblAndAddsUp(String name, Bill bill) throws Exception {
        byte[] xml = plain(bill);

        GenericJAXBMarshaller<?> reader = bill instanceof Invoice
                ? UBL21Marshaller.invoice()
                : UBL21Marshaller.creditNote();
        ErrorList errors = new ErrorList();
        assertThat((Object) reader.setUseSchema(true).setCollectErrors(errors).read(xml)).as(name).isNotNull();
        assertThat(errors.getAllErrors()).isEmpty();
        XmlReader total = XmlReader.of(xml).all("TaxTotal").getFirst();
        assertThat(total.all("TaxSubtotal").stream().map(part -> part.number("TaxAmount", "")).reduce(BigDecimal.ZERO,
                BigDecimal::add)).isEqualByComparingTo(total.number("TaxAmount", ""));
        assertThat(LineArithmeticTest.readUbl(xml))
                .allSatisfy(line -> assertThat(line.worked()).isEqualByComparingTo(line.net()));
    }

    @Test
    void plain_stateAndLocalParts_standByThemselves() throws Exception {
        XmlReader xml = XmlReader.of(plain(Bills.salesTaxOnOneLine()));
        List<XmlReader> parts = xml.all("TaxTotal/TaxSubtotal");

        assertThat(parts.stream().map(part -> part.text("TaxCategory/TaxScheme/ID") + " "
                + part.text("TaxCategory/TaxScheme/Name") + " " + part.text("TaxCategory/Percent") + "% of "
                + part.text("TaxableAmount") + " = " + part.text("TaxAmount"))).containsExactly(
                        "STT state 4% of 83.80 = 3.35", "LOC county 4.5% of 83.80 = 3.77",
                        "LOC transit district 0.375% of 83.80 = 0.32", "STT  0% of 158.95 = 0.00");
        assertThat(parts.getLast().text("TaxCategory/TaxExemptionReason")).isEqualTo("disposal: not taxed here");
        assertThat(xml.text("TaxTotal/TaxAmount")).isEqualTo("7.44");
        assertThat(xml.text("LegalMonetaryTotal/TaxExclusiveAmount")).isEqualTo("242.75");
        assertThat(xml.text("LegalMonetaryTotal/PayableAmount")).isEqualTo("250.19");
        XmlReader seller = xml.all("AccountingSupplierParty/Party").getFirst();
        assertThat(seller.text("PartyLegalEntity/CompanyID")).isEqualTo("00-1");
        assertThat(seller.text("PartyLegalEntity/CompanyID/@schemeName")).isEqualTo("Tax ID");
        assertThat(seller.texts("PartyIdentification/ID")).containsExactly("V-30881", "ICE-7");
        assertThat(seller.texts("PartyIdentification/ID/@schemeName")).containsExactly("License");
    }

    @Test
    void plain_byTheRulesOfEn16931_isRefused() {
        assertThat(SchematronRules.UBL_INVOICE.ids(plain(Bills.salesTaxOnOneLine()))).contains("BR-01", "BR-CO-04",
                "BR-32",
                "BR-47",
                "BR-48", "BR-CO-17");
    }

    /** Where EN 16931 is wanted, the tax is a charge that says what it is, and what is due stays the same. */
    @Test
    void asCharge_namesTheTaxAndItsBase() throws Exception {
        XmlReader xml = XmlReader.of(OfficialRulesTest.ubl(Bills.salesTaxOnOneLine()));
        XmlReader charge = xml.all("AllowanceCharge").getLast();

        assertThat(charge.text("ChargeIndicator")).isEqualTo("true");
        assertThat(charge.text("AllowanceChargeReasonCode")).isEqualTo("ZZZ");
        assertThat(charge.text("AllowanceChargeReason"))
                .isEqualTo("state tax, 4%; county tax, 4.5%; transit district tax, 0.375%");
        assertThat(charge.text("MultiplierFactorNumeric")).isEqualTo("8.875");
        assertThat(charge.text("BaseAmount")).isEqualTo("83.80");
        assertThat(charge.text("Amount")).isEqualTo("7.44");
        assertThat(xml.text("LegalMonetaryTotal/TaxExclusiveAmount")).isEqualTo("250.19");
        assertThat(xml.text("LegalMonetaryTotal/PayableAmount")).isEqualTo("250.19");
        assertThat(xml.texts("InvoiceLine/Item/ClassifiedTaxCategory/ID")).containsOnly("O");
        assertThat(xml.text("TaxTotal/TaxSubtotal/TaxCategory/TaxExemptionReasonCode")).isEqualTo("VATEX-EU-O");
    }

    /** Dinars have three decimals, which UBL itself does not mind. */
    @Test
    void plain_threeDecimals_areKept() throws Exception {
        Bill bill = BillBuilder.salesTax().currency("KWD")
                .single("service call", "52.125", "52.125", Optional.empty())
                .invoice("52.125", "52.125", "0", "52.125");

        assertThat(XmlReader.of(plain(bill)).text("LegalMonetaryTotal/PayableAmount")).isEqualTo("52.125");
    }
}
