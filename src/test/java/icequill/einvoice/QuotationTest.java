package icequill.einvoice;

import static org.assertj.core.api.Assertions.assertThat;

import com.helger.diagnostics.error.list.ErrorList;
import com.helger.ubl21.UBL21Marshaller;
import icequill.document.RepairQuote;
import icequill.party.Language;
import icequill.party.PaperSize;
import icequill.render.InvoiceFixture;
import icequill.render.words.Sentences;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import oasis.names.specification.ubl.schema.xsd.quotation_21.QuotationType;
import org.junit.jupiter.api.Test;

/** An offer as UBL 2.1: good by its schema, and read back as it was. */
class QuotationTest {

    private final RepairQuote quote = InvoiceFixture.of(Language.ENGLISH, PaperSize.LETTER, "USD", "US").withLines(3)
            .repairQuote();
    private final byte[] xml = EInvoice.quotation(quote, Sentences.of(Language.ENGLISH, "US")::say).orElseThrow();

    @Test
    void quotation_readBack_saysWhatThePaperSays() throws Exception {
        ErrorList errors = new ErrorList();
        QuotationType library = Objects
                .requireNonNull(UBL21Marshaller.quotation().setUseSchema(true).setCollectErrors(errors).read(xml));
        XmlReader read = XmlReader.of(Objects.requireNonNull(UBL21Marshaller.quotation().getAsBytes(library)));

        assertThat(errors.getAllErrors()).isEmpty();
        assertThat(read.text("ID")).isEqualTo("Q-2026-0114");
        assertThat(read.text("IssueDate")).isEqualTo("2026-06-01");
        assertThat(read.text("ValidityPeriod/EndDate")).isEqualTo("2026-07-01");
        // Two lines of 1300.00 at 5 % and 3 %, and one under warranty.
        assertThat(read.text("QuotedMonetaryTotal/TaxExclusiveAmount")).isEqualTo("2600.00");
        assertThat(read.text("TaxTotal/TaxAmount")).isEqualTo("208.00");
        assertThat(read.text("QuotedMonetaryTotal/PayableAmount")).isEqualTo("2808.00");
        assertThat(read.all("QuotationLine")).hasSize(3);
        assertThat(read.text("SellerSupplierParty/Party/PartyLegalEntity/RegistrationName"))
                .isEqualTo("Frost & Daughters");
        assertThat(read.text("BuyerCustomerParty/Party/PartyLegalEntity/RegistrationName")).isEqualTo("Quern & Tabb");
    }

    /** Worked out again from the bare file: price x quantity less what is taken off. */
    @Test
    void quotation_everyLine_worksOut() throws Exception {
        for (XmlReader line : XmlReader.of(xml).all("QuotationLine/LineItem")) {
            BigDecimal base = line.number("Price/BaseQuantity", "1");
            BigDecimal worked = line.number("Price/PriceAmount", "").multiply(line.number("Quantity", ""))
                    .divide(base, 2, RoundingMode.HALF_UP);
            assertThat(worked.subtract(line.number("AllowanceCharge/Amount", "0")))
                    .isEqualByComparingTo(line.number("LineExtensionAmount", ""));
        }
    }
}
