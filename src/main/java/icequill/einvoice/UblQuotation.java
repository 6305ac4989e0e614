package icequill.einvoice;

import icequill.document.Offer;
import icequill.document.ServicePeriod;
import java.util.List;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.DeliveryType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.LineItemType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.LocationType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.PeriodType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.QuotationLineType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.LineExtensionAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.QuantityType;
import oasis.names.specification.ubl.schema.xsd.quotation_21.QuotationType;

/** A UBL Quotation: what is offered, and until when. Its tax is that of today. */
final class UblQuotation {

    private UblQuotation() {
    }

    static QuotationType of(InvoiceContent content, Offer offer) {
        UblHead head = new UblHead(content);
        QuotationType quotation = new QuotationType();
        quotation.setUBLVersionID(UblHead.VERSION);
        quotation.setID(content.number());
        quotation.setIssueDate(offer.date());
        quotation.setNote(head.notes());
        quotation.setPricingCurrencyCode(content.currency());
        quotation.setValidityPeriod(validity(offer));
        UblParties parties = new UblParties(content);
        quotation.setSellerSupplierParty(parties.seller());
        quotation.setBuyerCustomerParty(parties.buyer());
        quotation.setDelivery(List.of(delivery(offer.served())));
        UblAmounts amounts = new UblAmounts(content.currency());
        quotation.setAllowanceCharge(amounts.adjustments(content.adjustments()));
        quotation.setTaxTotal(amounts.taxes(content));
        quotation.setQuotedMonetaryTotal(amounts.sums(content));
        content.lines().forEach(line -> quotation.addQuotationLine(line(line, amounts)));
        return quotation;
    }

    private static PeriodType validity(Offer offer) {
        PeriodType period = new PeriodType();
        period.setStartDate(offer.date());
        period.setEndDate(offer.validUntil());
        return period;
    }

    /** The site, without a day: the work is only planned. */
    private static DeliveryType delivery(ServicePeriod served) {
        LocationType location = new LocationType();
        served.storeNumber().ifPresent(location::setID);
        location.setAddress(UblParties.address(served.address()));
        DeliveryType delivery = new DeliveryType();
        delivery.setDeliveryLocation(location);
        delivery.setDeliveryParty(UblParties.named(served.site()));
        return delivery;
    }

    private static QuotationLineType line(Line line, UblAmounts amounts) {
        LineItemType item = new LineItemType();
        item.setID(String.valueOf(line.number()));
        item.setNote(UblItems.notes(line));
        item.setQuantity(UblItems.quantity(line, new QuantityType()));
        item.setLineExtensionAmount(amounts.of(line.net(), new LineExtensionAmountType()));
        item.setAllowanceCharge(amounts.adjustments(line.allowance().stream().toList()));
        item.setItem(UblItems.item(line));
        item.setPrice(UblItems.price(line, amounts));
        QuotationLineType target = new QuotationLineType();
        target.setID(String.valueOf(line.number()));
        target.setLineItem(item);
        return target;
    }
}
