package icequill.einvoice;

import java.math.BigDecimal;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.DocumentLineDocumentType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.LineTradeAgreementType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.LineTradeDeliveryType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.LineTradeSettlementType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.SupplyChainTradeLineItemType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradePriceType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeProductType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeSettlementLineMonetarySummationType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.TextType;

/** Lines (BG-25) in CII. */
final class CiiLines {

    private CiiLines() {
    }

    static SupplyChainTradeLineItemType line(Line line) {
        SupplyChainTradeLineItemType item = new SupplyChainTradeLineItemType();
        item.setAssociatedDocumentLineDocument(document(line));
        item.setSpecifiedTradeProduct(product(line));
        item.setSpecifiedLineTradeAgreement(agreement(line.quantity()));
        item.setSpecifiedLineTradeDelivery(delivery(line.quantity()));
        item.setSpecifiedLineTradeSettlement(settlement(line));
        return item;
    }

    private static DocumentLineDocumentType document(Line line) {
        DocumentLineDocumentType document = new DocumentLineDocumentType();
        document.setLineID(String.valueOf(line.number()));
        line.note().map(CiiValues::note).ifPresent(document::addIncludedNote);
        return document;
    }

    private static TradeProductType product(Line line) {
        TradeProductType product = new TradeProductType();
        product.addName(new TextType(line.name()));
        line.place().ifPresent(product::setDescription);
        return product;
    }

    /** A price for one says nothing about the base quantity. */
    private static LineTradeAgreementType agreement(PricedQuantity quantity) {
        TradePriceType price = new TradePriceType();
        price.addChargeAmount(CiiValues.amount(quantity.price()));
        if (quantity.per().compareTo(BigDecimal.ONE) != 0) {
            price.setBasisQuantity(CiiValues.quantity(quantity.per(), quantity.unit()));
        }
        LineTradeAgreementType agreement = new LineTradeAgreementType();
        agreement.setNetPriceProductTradePrice(price);
        return agreement;
    }

    private static LineTradeDeliveryType delivery(PricedQuantity quantity) {
        LineTradeDeliveryType delivery = new LineTradeDeliveryType();
        delivery.setBilledQuantity(CiiValues.quantity(quantity.number(), quantity.unit()));
        return delivery;
    }

    private static LineTradeSettlementType settlement(Line line) {
        TradeSettlementLineMonetarySummationType sum = new TradeSettlementLineMonetarySummationType();
        sum.addLineTotalAmount(CiiValues.amount(line.net()));
        LineTradeSettlementType settlement = new LineTradeSettlementType();
        line.categories().stream().map(CiiValues::category).forEach(settlement::addApplicableTradeTax);
        line.allowance().map(CiiValues::adjustment).ifPresent(settlement::addSpecifiedTradeAllowanceCharge);
        settlement.setSpecifiedTradeSettlementLineMonetarySummation(sum);
        return settlement;
    }
}
