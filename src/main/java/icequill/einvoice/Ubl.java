package icequill.einvoice;

import com.helger.ubl21.UBL21Marshaller;
import icequill.document.CombinedInvoice;
import icequill.document.CreditNote;
import icequill.document.InstallmentInvoice;
import icequill.document.Invoice;
import icequill.document.RepairQuote;
import icequill.document.StageInvoice;

/** The content in UBL 2.1. The first use of a kind of document loads its schema, which takes about a second. */
final class Ubl {

    private Ubl() {
    }

    static byte[] bytes(InvoiceContent content) {
        return switch (content.bill()) {
        case Invoice invoice -> XmlBytes.of(UBL21Marshaller.invoice(), UblInvoice.of(content));
        case CombinedInvoice invoice -> XmlBytes.of(UBL21Marshaller.invoice(), UblInvoice.of(content));
        case StageInvoice invoice -> XmlBytes.of(UBL21Marshaller.invoice(), UblInvoice.of(content));
        case InstallmentInvoice invoice -> XmlBytes.of(UBL21Marshaller.invoice(), UblInvoice.of(content));
        case RepairQuote quote -> XmlBytes.of(UBL21Marshaller.quotation(), UblQuotation.of(content, quote));
        case CreditNote credit -> XmlBytes.of(UBL21Marshaller.creditNote(), UblCreditNote.of(content));
        };
    }
}
