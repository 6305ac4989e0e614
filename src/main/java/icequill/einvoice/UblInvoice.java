package icequill.einvoice;

import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.InvoiceLineType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.InvoicedQuantityType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.LineExtensionAmountType;
import oasis.names.specification.ubl.schema.xsd.invoice_21.InvoiceType;

/** A UBL Invoice. */
final class UblInvoice {

    private UblInvoice() {
    }

    static InvoiceType of(InvoiceContent content) {
        UblHead head = new UblHead(content);
        InvoiceType invoice = new InvoiceType();
        head.version().ifPresent(invoice::setUBLVersionID);
        head.rules().ifPresent(invoice::setCustomizationID);
        invoice.setID(content.number());
        invoice.setIssueDate(content.bill().date());
        content.dueDate().ifPresent(invoice::setDueDate);
        invoice.setInvoiceTypeCode(content.typeCode());
        invoice.setNote(head.notes());
        invoice.setDocumentCurrencyCode(content.currency());
        content.bill().served().storeNumber().ifPresent(invoice::setBuyerReference);
        invoice.setInvoicePeriod(head.period());
        head.order().ifPresent(invoice::setOrderReference);
        invoice.setBillingReference(head.preceding());
        UblParties parties = new UblParties(content);
        invoice.setAccountingSupplierParty(parties.seller());
        invoice.setAccountingCustomerParty(parties.buyer());
        parties.payee().ifPresent(invoice::setPayeeParty);
        invoice.setDelivery(head.delivery());
        invoice.setPaymentMeans(head.payment());
        invoice.setPaymentTerms(head.terms());
        UblAmounts amounts = new UblAmounts(content.currency());
        invoice.setAllowanceCharge(amounts.adjustments(content.adjustments()));
        invoice.setTaxTotal(amounts.taxes(content));
        invoice.setLegalMonetaryTotal(amounts.sums(content));
        content.lines().forEach(line -> invoice.addInvoiceLine(line(line, amounts)));
        return invoice;
    }

    private static InvoiceLineType line(Line line, UblAmounts amounts) {
        InvoiceLineType item = new InvoiceLineType();
        item.setID(String.valueOf(line.number()));
        item.setNote(UblItems.notes(line));
        item.setInvoicedQuantity(UblItems.quantity(line, new InvoicedQuantityType()));
        item.setLineExtensionAmount(amounts.of(line.net(), new LineExtensionAmountType()));
        item.setAllowanceCharge(amounts.adjustments(line.allowance().stream().toList()));
        item.setItem(UblItems.item(line));
        item.setPrice(UblItems.price(line, amounts));
        return item;
    }
}
