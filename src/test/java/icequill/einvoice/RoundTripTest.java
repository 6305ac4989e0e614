package icequill.einvoice;

import static icequill.einvoice.OfficialRulesTest.cii;
import static icequill.einvoice.OfficialRulesTest.ubl;
import static org.assertj.core.api.Assertions.assertThat;

import com.helger.cii.d16b.CIID16BCrossIndustryInvoiceTypeMarshaller;
import com.helger.jaxb.GenericJAXBMarshaller;
import com.helger.ubl21.UBL21Marshaller;
import icequill.document.Bill;
import icequill.document.Invoice;
import icequill.money.Amounts;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What another program reads out of our XML is what the paper says. */
class RoundTripTest {

    static Stream<Arguments> bills() {
        return OfficialRulesTest.bills();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void ubl_readBack_saysWhatThePaperSays(String name, Bill bill) throws Exception {
        boolean isInvoice = bill instanceof Invoice;
        XmlReader read = isInvoice
                ? again(UBL21Marshaller.invoice(), ubl(bill))
                : again(UBL21Marshaller.creditNote(), ubl(bill));

        assertThat(read.text("ID")).as(name).isEqualTo(bill.number().orElseThrow());
        assertThat(read.text(isInvoice ? "InvoiceTypeCode" : "CreditNoteTypeCode"))
                .isEqualTo(isInvoice ? "380" : "381");
        assertThat(read.text("IssueDate")).isEqualTo(bill.date().toString());
        assertThat(read.text("DueDate")).isEqualTo(bill.dueDate().map(LocalDate::toString).orElse(""));
        assertThat(read.text("AccountingSupplierParty/Party/PartyLegalEntity/RegistrationName"))
                .isEqualTo(bill.shop().name());
        assertThat(read.text("AccountingCustomerParty/Party/PartyLegalEntity/RegistrationName"))
                .isEqualTo(bill.billTo().name());
        assertThat(read.text("BillingReference/InvoiceDocumentReference/ID")).isEqualTo(isInvoice ? "" : "2026-0114");
        assertThat(read.text("BillingReference/InvoiceDocumentReference/IssueDate"))
                .isEqualTo(isInvoice ? "" : "2026-05-14");
        XmlReader sums = read.all("LegalMonetaryTotal").getFirst();
        assertThat(sums.text("LineExtensionAmount")).isEqualTo(Amounts.plain(bill.totals().lines()));
        assertThat(sums.text("TaxInclusiveAmount")).isEqualTo(Amounts.plain(bill.totals().gross()));
        assertThat(sums.text("PayableAmount")).isEqualTo(Amounts.plain(bill.totals().gross()));
        assertThat(sums.text("PayableAmount/@currencyID")).isEqualTo(read.text("DocumentCurrencyCode"))
                .isEqualTo(bill.totals().gross().getCurrency().getCurrencyCode());
        if (Bills.withVat().containsKey(name)) {
            assertThat(sums.text("TaxExclusiveAmount")).isEqualTo(Amounts.plain(bill.totals().net()));
            assertThat(read.text("TaxTotal/TaxAmount")).isEqualTo(Amounts.plain(bill.totals().tax()));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void cii_readBack_saysWhatThePaperSays(String name, Bill bill) throws Exception {
        XmlReader read = again(new CIID16BCrossIndustryInvoiceTypeMarshaller(), cii(bill));

        boolean isInvoice = bill instanceof Invoice;
        assertThat(read.text("ExchangedDocument/ID")).as(name).isEqualTo(bill.number().orElseThrow());
        assertThat(read.text("ExchangedDocument/TypeCode")).isEqualTo(isInvoice ? "380" : "381");
        assertThat(read.text("ExchangedDocument/IssueDateTime/DateTimeString"))
                .isEqualTo(bill.date().format(DateTimeFormatter.BASIC_ISO_DATE));
        XmlReader deal = read.all("SupplyChainTradeTransaction/ApplicableHeaderTradeAgreement").getFirst();
        assertThat(deal.text("SellerTradeParty/Name")).isEqualTo(bill.shop().name());
        assertThat(deal.text("BuyerTradeParty/Name")).isEqualTo(bill.billTo().name());
        assertThat(deal.text("BuyerOrderReferencedDocument/IssuerAssignedID")).isEqualTo("PO-9");
        XmlReader settlement = read.all("SupplyChainTradeTransaction/ApplicableHeaderTradeSettlement").getFirst();
        assertThat(settlement.text("InvoiceReferencedDocument/IssuerAssignedID"))
                .isEqualTo(isInvoice ? "" : "2026-0114");
        assertThat(settlement.text("InvoiceReferencedDocument/FormattedIssueDateTime/DateTimeString"))
                .isEqualTo(isInvoice ? "" : "20260514");
        XmlReader sums = settlement.all("SpecifiedTradeSettlementHeaderMonetarySummation").getFirst();
        assertThat(sums.text("LineTotalAmount")).isEqualTo(Amounts.plain(bill.totals().lines()));
        assertThat(sums.text("GrandTotalAmount")).isEqualTo(Amounts.plain(bill.totals().gross()));
        assertThat(sums.text("DuePayableAmount")).isEqualTo(Amounts.plain(bill.totals().gross()));
        if (Bills.withVat().containsKey(name)) {
            assertThat(sums.text("TaxBasisTotalAmount")).isEqualTo(Amounts.plain(bill.totals().net()));
            assertThat(sums.text("TaxTotalAmount")).isEqualTo(Amounts.plain(bill.totals().tax()));
        }
    }

    /** Through the library's types and out again. */
    private static <T> XmlReader again(GenericJAXBMarshaller<T> library, byte[] xml) throws Exception {
        T read = Objects.requireNonNull(library.read(xml));
        return XmlReader.of(Objects.requireNonNull(library.getAsBytes(read)));
    }

    @Test
    void ubl_placeAndPayment_areThere() throws Exception {
        XmlReader xml = XmlReader.of(ubl(Bills.doseAndSurcharge()));

        assertThat(xml.text("CustomizationID")).isEqualTo("urn:cen.eu:en16931:2017");
        assertThat(xml.text("BuyerReference")).isEqualTo("0042");
        assertThat(xml.text("OrderReference/ID")).isEqualTo("PO-9");
        assertThat(xml.text("InvoicePeriod/StartDate")).isEqualTo("2026-05-13");
        assertThat(xml.text("InvoicePeriod/EndDate")).isEqualTo("2026-05-14");
        assertThat(xml.text("Delivery/ActualDeliveryDate")).isEqualTo("2026-05-14");
        assertThat(xml.text("Delivery/DeliveryParty/PartyName/Name")).isEqualTo("Mill Lane bakery");
        assertThat(xml.text("Delivery/DeliveryLocation/Address/StreetName")).isEqualTo("Backofen 1");
        assertThat(xml.text("AccountingSupplierParty/Party/PartyIdentification/ID")).isEqualTo("V-30881");
        assertThat(xml.text("AccountingSupplierParty/Party/PartyTaxScheme/CompanyID")).isEqualTo("DE123456789");
        assertThat(xml.text("AccountingSupplierParty/Party/Contact/Telephone")).isEqualTo("555-0100");
        assertThat(xml.text("AccountingCustomerParty/Party/PartyTaxScheme/CompanyID")).isEqualTo("DE987654321");
        assertThat(xml.text("AccountingCustomerParty/Party/Contact/Name")).isEqualTo("Buchhaltung");
        assertThat(xml.text("PayeeParty/PartyName/Name")).isEqualTo("Frost Receivables");
        assertThat(xml.text("PaymentMeans/PaymentMeansCode")).isEqualTo("30");
        assertThat(xml.text("PaymentMeans/PayeeFinancialAccount/ID")).isEqualTo("DE02120300000000202051");
        assertThat(xml.text("PaymentTerms/Note")).isEqualTo("Please pay by June 13, 2026.");
    }

    /** What is not subject to VAT names nobody's VAT identifier (BR-O-02 to BR-O-04), and gives its reason. */
    @Test
    void outsideScope_noVatIdentifiers() throws Exception {
        XmlReader xml = XmlReader.of(ubl(Bills.outsideScope()));

        assertThat(xml.texts("AccountingSupplierParty/Party/PartyTaxScheme")).isEmpty();
        assertThat(xml.texts("AccountingCustomerParty/Party/PartyTaxScheme")).isEmpty();
        assertThat(xml.text("AccountingSupplierParty/Party/PartyLegalEntity/CompanyID")).isEqualTo("00-1");
        assertThat(xml.text("TaxTotal/TaxSubtotal/TaxCategory/TaxExemptionReason")).isEqualTo("not subject to VAT");
    }

    /** Beside other categories it is exempt, and so is a line without a rate; the reasons say which is what. */
    @Test
    void outsideScopeBesideOthers_isExemptWithItsReason() throws Exception {
        XmlReader exempt = XmlReader.of(ubl(Bills.outsideScopeBesideOthers())).all("TaxTotal/TaxSubtotal").getLast();

        assertThat(exempt.text("TaxCategory/ID")).isEqualTo("E");
        assertThat(exempt.text("TaxableAmount")).isEqualTo("90.00");
        assertThat(exempt.text("TaxCategory/TaxExemptionReason"))
                .isEqualTo("not subject to VAT; exempt from VAT; disposal: not taxed here");
    }

    @Test
    void credit_asksForNoPaymentButSaysWhatHappens() throws Exception {
        XmlReader xml = XmlReader.of(ubl(Bills.wholeCredit()));

        assertThat(xml.texts("PaymentMeans")).isEmpty();
        assertThat(xml.text("PaymentTerms/Note")).startsWith("We take it off what you owe us");
        assertThat(xml.text("Note")).isEqualTo("The filter was the wrong one.");
    }
}
