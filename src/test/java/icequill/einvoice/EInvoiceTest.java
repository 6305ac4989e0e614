package icequill.einvoice;

import static icequill.einvoice.BillBuilder.REVERSE;
import static icequill.einvoice.BillBuilder.SALES;
import static icequill.einvoice.BillBuilder.STANDARD;
import static icequill.einvoice.BillBuilder.salesTax;
import static icequill.einvoice.BillBuilder.vat;
import static icequill.einvoice.OfficialRulesTest.WORDING;
import static icequill.einvoice.OfficialRulesTest.cii;
import static icequill.einvoice.OfficialRulesTest.ubl;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import com.helger.ubl21.UBL21Marshaller;
import icequill.document.Bill;
import icequill.party.Address;
import icequill.party.BillTo;
import icequill.party.Remittance;
import icequill.party.SalesTaxEncoding;
import icequill.party.Shop;
import icequill.problem.Code;
import icequill.problem.Problem;
import icequill.work.Outcome;
import icequill.work.Quantity;
import icequill.work.Unit;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import oasis.names.specification.ubl.schema.xsd.invoice_21.InvoiceType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is asked for before anything is written, and what is never written. */
class EInvoiceTest {

    static Stream<Arguments> bills() {
        return OfficialRulesTest.bills();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bills")
    void written_twice_sameBytesWithoutDocumentType(String name, Bill bill) {
        for (List<byte[]> pair : List.of(List.of(ubl(bill), ubl(bill)), List.of(cii(bill), cii(bill)))) {
            assertThat(pair.getFirst()).as(name).isEqualTo(pair.getLast());
            assertThat(new String(pair.getFirst(), UTF_8)).startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                    .doesNotContain("<!DOCTYPE", "\r");
        }
    }

    @Test
    void draft_hasNoNumber() {
        assertThat(problems(service(vat().draft()))).extracting(Problem::code, Problem::message)
                .containsExactly(tuple(Code.MISSING, "a draft has no number"));
    }

    @Test
    void onlyDeclinedLines_nothingIsBilled() {
        Bill bill = vat().notCharged("new float", "39", Outcome.DECLINED, STANDARD).tax(STANDARD, "0", "0").invoice("0",
                "0", "0", "0");

        assertThat(problems(bill)).extracting(Problem::message).containsExactly("nothing is billed");
    }

    @Test
    void vat_sellerWithoutVatIdentifier_saysWhereToAddIt() {
        Bill bill = service(vat().shop(shop -> with(shop, Optional.empty(), shop.registrations(), shop.address())));

        assertThat(problems(bill)).extracting(Problem::text).containsExactly(
                "shop.yaml: vatId: an invoice with VAT needs the shop's VAT identifier (add vatId, such as DE123456789)");
        assertThat(EInvoice.cii(bill, WORDING).problems()).hasSize(1);
    }

    @Test
    void vat_identifiersOfNoCountry_bothReported() {
        Bill bill = service(
                vat().shop(shop -> with(shop, Optional.of("QQ1"), shop.registrations(), shop.address()))
                        .billTo(to -> new BillTo(to.name(), to.attention(), to.address(), to.email(),
                                Optional.of("ZZ2"))));

        assertThat(problems(bill)).extracting(Problem::message).containsExactly(
                "the VAT identifier \"QQ1\" of Frost & Daughters does not begin with a country",
                "the VAT identifier \"ZZ2\" of Bäckerei Ähre & Söhne does not begin with a country");
    }

    @Test
    void reverseCharge_customerWithoutIdentifier_saysWhereToAddIt() {
        Bill bill = vat()
                .billTo(to -> new BillTo(to.name(), to.attention(), to.address(), to.email(), Optional.empty()))
                .labor(45, "98", "73.50", REVERSE).tax(REVERSE, "73.50", "0").invoice("73.50", "73.50", "0", "73.50");

        assertThat(problems(bill)).extracting(Problem::text).containsExactly(
                "Bäckerei Ähre & Söhne owes the tax, so the invoice needs the customer's VAT identifier "
                        + "(add vatId to billTo, such as DE123456789)");
    }

    @ParameterizedTest
    @CsvSource({"reverse charge, VATEX-EU-AE, reverse charge: you owe the tax",
            "within the union, VATEX-EU-IC, exempt supply to a business in another EU state",
            "export, VATEX-EU-G, exempt export out of the EU"})
    void customerOwesTheTax_reasonAndCodeSaySo(String bill, String code, String reason) throws Exception {
        XmlReader xml = XmlReader.of(ubl(Objects.requireNonNull(Bills.all().get(bill))));

        assertThat(xml.text("TaxTotal/TaxSubtotal/TaxCategory/TaxExemptionReasonCode")).isEqualTo(code);
        assertThat(xml.text("TaxTotal/TaxSubtotal/TaxCategory/TaxExemptionReason")).isEqualTo(reason);
        assertThat(xml.text("AccountingCustomerParty/Party/PartyTaxScheme/CompanyID")).isEqualTo("DE987654321");
    }

    /** What is paid in advance has not been delivered; its period says what it is for. */
    @Test
    void paidInAdvance_periodButNoDeliveryInTheFuture() throws Exception {
        Bill bill = service(vat().nights(30));

        XmlReader ubl = XmlReader.of(ubl(bill));
        assertThat(ubl.text("Delivery/ActualDeliveryDate")).isEmpty();
        assertThat(ubl.text("InvoicePeriod/StartDate") + " " + ubl.text("InvoicePeriod/EndDate"))
                .isEqualTo("2026-05-13 2026-06-12");
        assertThat(new String(cii(bill), UTF_8)).doesNotContain("ActualDeliverySupplyChainEvent")
                .contains("BillingSpecifiedPeriod");
        assertThat(SchematronRules.UBL_INVOICE.ids(ubl(bill))).isEmpty();
        assertThat(SchematronRules.CII.ids(cii(bill))).isEmpty();
    }

    @Test
    void greekIdentifier_isValid() {
        Bill bill = service(vat().shop(shop -> with(shop, Optional.of("EL123456789"), List.of(), shop.address())));

        assertThat(SchematronRules.UBL_INVOICE.ids(ubl(bill))).isEmpty();
        assertThat(SchematronRules.CII.ids(cii(bill))).isEmpty();
    }

    @Test
    void unknownCountry_isReported() {
        Bill bill = service(vat().shop(shop -> with(shop, shop.vatId(), shop.registrations(),
                new Address(List.of(), "Hafen", "", "", "UK"))));

        assertThat(problems(bill)).extracting(Problem::text).containsExactly(
                "shop.yaml: address.country: the address of Frost & Daughters is in \"UK\", which is no country "
                        + "(a code of ISO 3166-1, such as US)");
    }

    /** By EN 16931 the seller has a number; in plain UBL he need not. */
    @Test
    void salesTax_sellerWithoutAnyNumber_onlyPlain() {
        BillBuilder builder = salesTax().withoutVendorNumber()
                .shop(shop -> with(shop, Optional.empty(), List.of(), shop.address()))
                .single("service call", "52", "52", Optional.of(SALES))
                .tax(SALES, "52", "4.62", "2.08", "2.34", "0.20");
        Bill bill = builder.invoice("52", "52", "4.62", "56.62");

        assertThat(problems(bill)).extracting(Problem::code, problem -> problem.place().path())
                .containsExactly(tuple(Code.MISSING, "registrations"));
        assertThat(EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).problems()).isEmpty();
    }

    @Test
    void threeDecimals_cannotBeEn16931() {
        Bill bill = vat().currency("KWD").single("service call", "52.125", "52.125", Optional.of(STANDARD))
                .tax(STANDARD, "52.125", "9.904").invoice("52.125", "52.125", "9.904", "62.029");

        assertThat(problems(bill)).extracting(Problem::text)
                .containsExactly("shop.yaml: currency: amounts in KWD have 3 decimals, and an electronic invoice by "
                        + "EN 16931 has no more than 2 (send the paper itself)");
        assertThat(EInvoice.ubl(bill, SalesTaxEncoding.PLAIN, WORDING).problems()).hasSize(1);
    }

    @Test
    void noAccount_meansOfPaymentNotDefined() throws Exception {
        Bill bill = service(vat().shop(shop -> {
            Remittance remittance = new Remittance(shop.name(), shop.address(), List.of(), Optional.empty(),
                    Optional.empty(), Optional.empty());
            return new Shop(shop.name(), shop.address(), shop.phone(), shop.email(), shop.registrations(), shop.vatId(),
                    remittance, shop.zone(), shop.currency(), shop.language(), shop.paper(), shop.accent(), shop.logo(),
                    shop.taxBasis(), shop.sourcing(), shop.taxPlace(), shop.paymentDays(), SalesTaxEncoding.PLAIN);
        }));

        XmlReader xml = XmlReader.of(ubl(bill));
        assertThat(xml.text("PaymentMeans/PaymentMeansCode")).isEqualTo("1");
        assertThat(xml.texts("PaymentMeans/PayeeFinancialAccount")).isEmpty();
        assertThat(xml.texts("PayeeParty")).isEmpty();
        assertThat(SchematronRules.UBL_INVOICE.ids(ubl(bill))).isEmpty();
        assertThat(SchematronRules.CII.ids(cii(bill))).isEmpty();
    }

    /** Amounts that contradict each other are a bug; no XML is made of it. */
    @Test
    void contradiction_isNeverWritten() {
        assertThrown(service(vat(), "52", "52", "9.88", "61.89"), "the total: 61.88 would be written");
        assertThrown(service(vat(), "52", "52", "9.87", "61.87"), "the tax: 9.88 would be written");
        assertThrown(service(vat(), "52", "51", "9.88", "60.88"), "the net: 52.00 would be written");
        assertThrown(service(vat(), "53", "52", "9.88", "61.88"), "the lines: 52.00 would be written");
        assertThrown(service(vat().discount("1"), "52", "51", "9.88", "60.88"), "the discount: 0.00 would be written");
        assertThrown(vat().line("Labor", Quantity.of(60, Unit.MINUTE), vat().price("98", Unit.HOUR), "98", "9.80",
                "88", "88", Optional.of(STANDARD), Outcome.CHARGED).tax(STANDARD, "88", "16.72")
                .invoice("88", "88", "16.72", "104.72"), "line 1: 88.20 would be written, but 88.00 is on the paper");
    }

    @Test
    void againstTheSchema_isNeverWritten() {
        assertThatThrownBy(() -> XmlBytes.of(UBL21Marshaller.invoice(), new InvoiceType()))
                .isInstanceOf(IllegalStateException.class).hasMessageContaining("not by the schema");
    }

    @Test
    void textWithSigns_isReadAsItWas() throws Exception {
        String name = "A <b>&amp; \"Söhne\" ]]> \u2044 \uD83E\uDDCA \u0633\u0644\u0627\u0645";
        Bill bill = service(vat().billTo(
                to -> new BillTo(name, Optional.empty(), to.address(), Optional.empty(), Optional.empty())));

        assertThat(XmlReader.of(ubl(bill)).text("AccountingCustomerParty/Party/PartyLegalEntity/RegistrationName"))
                .isEqualTo(name);
        assertThat(XmlReader.of(cii(bill)).text(
                "SupplyChainTradeTransaction/ApplicableHeaderTradeAgreement/BuyerTradeParty/Name")).isEqualTo(name);
    }

    private static void assertThrown(Bill bill, String message) {
        assertThatThrownBy(() -> ubl(bill)).isInstanceOf(IllegalStateException.class).hasMessageContaining(message);
        assertThatThrownBy(() -> cii(bill)).isInstanceOf(IllegalStateException.class).hasMessageContaining(message);
    }

    private static Bill service(BillBuilder builder) {
        return service(builder, "52", "52", "9.88", "61.88");
    }

    private static Bill service(BillBuilder builder, String sum, String net, String tax, String gross) {
        return builder.single("service call", "52", "52", Optional.of(STANDARD)).tax(STANDARD, "52", "9.88")
                .invoice(sum, net, tax, gross);
    }

    private static List<Problem> problems(Bill bill) {
        return EInvoice.ubl(bill, SalesTaxEncoding.EN16931, WORDING).problems();
    }

    private static Shop with(Shop shop, Optional<String> vatId, List<Remittance.Detail> registrations,
            Address address) {
        return new Shop(shop.name(), address, shop.phone(), shop.email(), registrations, vatId, shop.remittance(),
                shop.zone(), shop.currency(), shop.language(), shop.paper(), shop.accent(), shop.logo(),
                shop.taxBasis(), shop.sourcing(), shop.taxPlace(), shop.paymentDays(), SalesTaxEncoding.PLAIN);
    }
}
