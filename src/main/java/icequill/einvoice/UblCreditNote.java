package icequill.einvoice;

import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.CreditNoteLineType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.CreditedQuantityType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.LineExtensionAmountType;
import oasis.names.specification.ubl.schema.xsd.creditnote_21.CreditNoteType;

/** A UBL CreditNote; what it says is positive, as on paper. */
final class UblCreditNote {

    private UblCreditNote() {
    }

    static CreditNoteType of(InvoiceContent content) {
        UblHead head = new UblHead(content);
        CreditNoteType credit = new CreditNoteType();
        head.version().ifPresent(credit::setUBLVersionID);
        head.rules().ifPresent(credit::setCustomizationID);
        credit.setID(content.number());
        credit.setIssueDate(content.bill().date());
        credit.setCreditNoteTypeCode(content.typeCode());
        credit.setNote(head.notes());
        credit.setDocumentCurrencyCode(content.currency());
        content.bill().served().storeNumber().ifPresent(credit::setBuyerReference);
        credit.setInvoicePeriod(head.period());
        head.order().ifPresent(credit::setOrderReference);
        credit.setBillingReference(head.preceding());
        UblParties parties = new UblParties(content);
        credit.setAccountingSupplierParty(parties.seller());
        credit.setAccountingCustomerParty(parties.buyer());
        credit.setDelivery(head.delivery());
        credit.setPaymentTerms(head.terms());
        UblAmounts amounts = new UblAmounts(content.currency());
        credit.setAllowanceCharge(amounts.adjustments(content.adjustments()));
        credit.setTaxTotal(amounts.taxes(content));
        credit.setLegalMonetaryTotal(amounts.sums(content));
        content.lines().forEach(line -> credit.addCreditNoteLine(line(line, amounts)));
        return credit;
    }

    private static CreditNoteLineType line(Line line, UblAmounts amounts) {
        CreditNoteLineType item = new CreditNoteLineType();
        item.setID(String.valueOf(line.number()));
        item.setNote(UblItems.notes(line));
        item.setCreditedQuantity(UblItems.quantity(line, new CreditedQuantityType()));
        item.setLineExtensionAmount(amounts.of(line.net(), new LineExtensionAmountType()));
        item.setAllowanceCharge(amounts.adjustments(line.allowance().stream().toList()));
        item.setItem(UblItems.item(line));
        item.setPrice(UblItems.price(line, amounts));
        return item;
    }
}
