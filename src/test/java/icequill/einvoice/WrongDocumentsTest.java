package icequill.einvoice;

import static icequill.einvoice.OfficialRulesTest.cii;
import static icequill.einvoice.OfficialRulesTest.ubl;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import icequill.document.Bill;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Our own documents, with one thing changed, break the rule that is meant for it: so the rules do look at what we write. */
class WrongDocumentsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "<cbc:PayableAmount currencyID=\"EUR\">177.67 | <cbc:PayableAmount currencyID=\"EUR\">177.68 | BR-CO-16",
            "<cbc:TaxInclusiveAmount currencyID=\"EUR\">177.67 | <cbc:TaxInclusiveAmount currencyID=\"EUR\">177.68 | BR-CO-15 BR-CO-16",
            "<cbc:TaxExclusiveAmount currencyID=\"EUR\">157.80 | <cbc:TaxExclusiveAmount currencyID=\"EUR\">157.79 | BR-CO-13 BR-CO-15",
            "<cbc:TaxAmount currencyID=\"EUR\">19.87 | <cbc:TaxAmount currencyID=\"EUR\">19.88 | BR-CO-14 BR-CO-15",
            "<cbc:TaxableAmount currencyID=\"EUR\">84.30 | <cbc:TaxableAmount currencyID=\"EUR\">104.30 | BR-CO-17 BR-S-08 BR-S-09",
            "unitCode=\"EA\" | unitCode=\"VISIT\" | BR-CL-23", "380</cbc:Inv | 310</cbc:Inv | BR-CL-01",
            "177.67</cbc:PayableAmount> | 177.670</cbc:PayableAmount> | BR-DEC-18 UBL-DT-01",
            "<cbc:CompanyID>DE123456789 | <cbc:CompanyID>QQ123456789 | BR-CO-09"})
    void ubl_oneThingChanged_breaksTheRuleForIt(String right, String wrong, String rules) {
        assertThat(SchematronRules.UBL_INVOICE.ids(changed(ubl(Bills.twoRates()), right, wrong)))
                .containsExactlyInAnyOrder(rules.split(" ", -1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "<ram:DuePayableAmount>177.67 | <ram:DuePayableAmount>177.68 | BR-CO-16",
            "<ram:GrandTotalAmount>177.67 | <ram:GrandTotalAmount>177.68 | BR-CO-15 BR-CO-16",
            "unitCode=\"EA\" | unitCode=\"VISIT\" | BR-CL-23", "380</ram:TypeCode | 310</ram:TypeCode | BR-CL-01",
            "<ram:DuePayableAmount>177.67 | <ram:DuePayableAmount>177.670 | BR-DEC-18",
            "<ram:ID schemeID=\"VA\">DE123456789 | <ram:ID schemeID=\"VA\">QQ123456789 | BR-CO-09"})
    void cii_oneThingChanged_breaksTheRuleForIt(String right, String wrong, String rules) {
        assertThat(SchematronRules.CII.ids(changed(cii(Bills.twoRates()), right, wrong)))
                .containsExactlyInAnyOrder(rules.split(" ", -1));
    }

    @Test
    void sellerWithoutAnyNumber_breaksTheRulesForIt() {
        String xml = new String(ubl(Bills.twoRates()), UTF_8);
        String scheme = "<cac:PartyTaxScheme>";
        int from = xml.indexOf(scheme);
        int until = xml.indexOf("</cac:PartyTaxScheme>") + scheme.length() + 1;
        String number = "<cac:PartyIdentification>\n        <cbc:ID>V-30881</cbc:ID>\n      </cac:PartyIdentification>";
        assertThat(xml).contains(number);

        byte[] without = (xml.substring(0, from) + xml.substring(until)).replace(number, "").getBytes(UTF_8);

        assertThat(SchematronRules.UBL_INVOICE.ids(without)).containsExactly("BR-CO-26", "BR-S-02");
    }

    /** Category O may stand alone only; here one line says S. */
    @Test
    void outsideScopeBesideStandard_breaksTheRulesForIt() {
        Bill bill = Bills.outsideScope();
        byte[] mixed = changed(ubl(bill), "<cac:ClassifiedTaxCategory>\n        <cbc:ID>O</cbc:ID>",
                "<cac:ClassifiedTaxCategory>\n        <cbc:ID>S</cbc:ID>\n        <cbc:Percent>19</cbc:Percent>");

        assertThat(SchematronRules.UBL_INVOICE.ids(mixed)).contains("BR-O-12", "BR-S-01", "BR-S-02");
    }

    /** The rules look at no line, and let a tax differ by almost one euro: that is why we look ourselves. */
    @Test
    void wrongLineAndTax_rulesDoNotNotice() {
        byte[] wrong = changed(ubl(Bills.laborAcrossBands()), "<cbc:PriceAmount currencyID=\"EUR\">98.00",
                "<cbc:PriceAmount currencyID=\"EUR\">99.00");

        assertThat(SchematronRules.UBL_INVOICE.ids(wrong)).isEqualTo(List.of());
    }

    private static byte[] changed(byte[] xml, String right, String wrong) {
        String text = new String(xml, UTF_8);
        assertThat(text).contains(right);
        return text.replace(right, wrong).getBytes(UTF_8);
    }
}
