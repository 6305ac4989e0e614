package icequill.einvoice;

import icequill.document.Bill;
import icequill.document.Offer;
import icequill.explain.Phrase;
import icequill.party.SalesTaxEncoding;
import icequill.problem.Validated;
import java.util.function.Function;

/**
 * A bill as XML in UTF-8. The same bill gives the same bytes. Nothing is written that says another amount than the paper; data
 * that the rules ask for and the bill has not is a problem that says where to add it.
 */
public final class EInvoice {

    private EInvoice() {
    }

    /**
     * As UBL 2.1: an Invoice or a CreditNote.
     *
     * @param encoding of sales tax; VAT has only one
     * @param wording says a phrase in the language of the bill
     */
    public static Validated<byte[]> ubl(Bill bill, SalesTaxEncoding encoding, Function<Phrase, String> wording) {
        return InvoiceContent.of(bill, encoding, wording).map(TotalsCheck::checked).map(Ubl::bytes);
    }

    /**
     * An offer as a UBL 2.1 Quotation.
     *
     * @param wording says a phrase in the language of the offer
     */
    public static Validated<byte[]> quotation(Offer offer, Function<Phrase, String> wording) {
        return InvoiceContent.of(offer, SalesTaxEncoding.PLAIN, wording).map(TotalsCheck::checked).map(Ubl::bytes);
    }

    /**
     * As CII D16B by EN 16931: what a PDF carries as {@code factur-x.xml}.
     *
     * @param wording says a phrase in the language of the bill
     */
    public static Validated<byte[]> cii(Bill bill, Function<Phrase, String> wording) {
        return InvoiceContent.of(bill, SalesTaxEncoding.EN16931, wording).map(TotalsCheck::checked).map(Cii::bytes);
    }
}
