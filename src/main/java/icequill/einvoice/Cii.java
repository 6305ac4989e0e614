package icequill.einvoice;

import com.helger.cii.d16b.CIID16BCrossIndustryInvoiceTypeMarshaller;
import un.unece.uncefact.data.standard.crossindustryinvoice._100.CrossIndustryInvoiceType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.DocumentContextParameterType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.ExchangedDocumentContextType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.ExchangedDocumentType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.SupplyChainTradeTransactionType;

/** The content in CII D16B. The first use loads the schema, which takes about a second. */
final class Cii {

    private Cii() {
    }

    static byte[] bytes(InvoiceContent content) {
        CrossIndustryInvoiceType invoice = new CrossIndustryInvoiceType();
        invoice.setExchangedDocumentContext(context());
        invoice.setExchangedDocument(document(content));
        invoice.setSupplyChainTradeTransaction(transaction(content));
        return XmlBytes.of(new CIID16BCrossIndustryInvoiceTypeMarshaller(), invoice);
    }

    /** BG-2. */
    private static ExchangedDocumentContextType context() {
        DocumentContextParameterType rules = new DocumentContextParameterType();
        rules.setID(Codes.EN16931);
        ExchangedDocumentContextType context = new ExchangedDocumentContextType();
        context.addGuidelineSpecifiedDocumentContextParameter(rules);
        return context;
    }

    private static ExchangedDocumentType document(InvoiceContent content) {
        ExchangedDocumentType document = new ExchangedDocumentType();
        document.setID(content.number());
        document.setTypeCode(content.typeCode());
        document.setIssueDateTime(CiiValues.date(content.bill().date()));
        content.notes().stream().map(CiiValues::note).forEach(document::addIncludedNote);
        return document;
    }

    private static SupplyChainTradeTransactionType transaction(InvoiceContent content) {
        CiiParties parties = new CiiParties(content);
        SupplyChainTradeTransactionType transaction = new SupplyChainTradeTransactionType();
        content.lines().stream().map(CiiLines::line).forEach(transaction::addIncludedSupplyChainTradeLineItem);
        transaction.setApplicableHeaderTradeAgreement(parties.agreement());
        transaction.setApplicableHeaderTradeDelivery(parties.delivery());
        transaction.setApplicableHeaderTradeSettlement(new CiiSettlement(content).settlement());
        return transaction;
    }
}
