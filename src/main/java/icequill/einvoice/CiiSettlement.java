package icequill.einvoice;

import icequill.document.ServicePeriod;
import icequill.party.Remittance;
import java.util.Optional;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.CreditorFinancialAccountType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.HeaderTradeSettlementType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.ReferencedDocumentType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.SpecifiedPeriodType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradePaymentTermsType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeSettlementHeaderMonetarySummationType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeSettlementPaymentMeansType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeTaxType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.AmountType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.TextType;

/** Payment, taxes and sums in CII. */
record CiiSettlement(InvoiceContent content) {

    /** Two letters and two check digits begin an IBAN (ISO 13616). */
    private static final String IBAN = "[A-Z]{2}[0-9]{2}[A-Z0-9]{11,30}";

    HeaderTradeSettlementType settlement() {
        HeaderTradeSettlementType settlement = new HeaderTradeSettlementType();
        settlement.setInvoiceCurrencyCode(content.currency());
        if (content.asksForPayment()) {
            payment(settlement);
        }
        content.taxes().stream().map(CiiSettlement::tax).forEach(settlement::addApplicableTradeTax);
        period().ifPresent(settlement::setBillingSpecifiedPeriod);
        content.adjustments().stream().map(CiiValues::adjustment)
                .forEach(settlement::addSpecifiedTradeAllowanceCharge);
        settlement.addSpecifiedTradePaymentTerms(terms());
        settlement.setSpecifiedTradeSettlementHeaderMonetarySummation(sums());
        // CII D16B has room for one; the lines name them all.
        content.preceding().stream().findFirst().ifPresent(original -> {
            ReferencedDocumentType invoice = new ReferencedDocumentType();
            invoice.setIssuerAssignedID(original.number());
            invoice.setFormattedIssueDateTime(CiiValues.formatted(original.date()));
            settlement.setInvoiceReferencedDocument(invoice);
        });
        return settlement;
    }

    /** BG-16 and, where another than the seller takes the money, BG-10. */
    private void payment(HeaderTradeSettlementType settlement) {
        Remittance remittance = content.bill().shop().remittance();
        settlement.addPaymentReference(new TextType(content.number()));
        if (!remittance.payee().equals(content.bill().shop().name())) {
            settlement.setPayeeTradeParty(CiiParties.named(remittance.payee()));
        }
        TradeSettlementPaymentMeansType means = new TradeSettlementPaymentMeansType();
        means.setTypeCode(remittance.account().isPresent() ? Codes.CREDIT_TRANSFER : Codes.NOT_DEFINED);
        remittance.account().ifPresent(number -> {
            CreditorFinancialAccountType account = new CreditorFinancialAccountType();
            if (number.matches(IBAN)) {
                account.setIBANID(number);
            } else {
                account.setProprietaryID(number);
            }
            account.setAccountName(remittance.payee());
            means.setPayeePartyCreditorFinancialAccount(account);
        });
        settlement.addSpecifiedTradeSettlementPaymentMeans(means);
    }

    /** BG-23. */
    private static TradeTaxType tax(TaxShare share) {
        TradeTaxType tax = CiiValues.category(share.category());
        tax.addCalculatedAmount(CiiValues.amount(share.tax()));
        tax.addBasisAmount(CiiValues.amount(share.base()));
        share.reason().ifPresent(tax::setExemptionReason);
        share.reasonCode().ifPresent(tax::setExemptionReasonCode);
        return tax;
    }

    private Optional<SpecifiedPeriodType> period() {
        if (!content.hasPeriod()) {
            return Optional.empty();
        }
        ServicePeriod served = content.bill().served();
        SpecifiedPeriodType period = new SpecifiedPeriodType();
        period.setStartDateTime(CiiValues.date(served.from()));
        period.setEndDateTime(CiiValues.date(served.until()));
        return Optional.of(period);
    }

    /** BT-20 and BT-9. */
    private TradePaymentTermsType terms() {
        TradePaymentTermsType terms = new TradePaymentTermsType();
        terms.addDescription(new TextType(content.terms()));
        content.dueDate().map(CiiValues::date).ifPresent(terms::setDueDateDateTime);
        return terms;
    }

    /** BG-22. Only the tax names its currency. */
    private TradeSettlementHeaderMonetarySummationType sums() {
        Sums sums = content.sums();
        TradeSettlementHeaderMonetarySummationType total = new TradeSettlementHeaderMonetarySummationType();
        total.addLineTotalAmount(CiiValues.amount(sums.lines()));
        if (!sums.charges().isZero()) {
            total.addChargeTotalAmount(CiiValues.amount(sums.charges()));
        }
        if (!sums.allowances().isZero()) {
            total.addAllowanceTotalAmount(CiiValues.amount(sums.allowances()));
        }
        total.addTaxBasisTotalAmount(CiiValues.amount(sums.net()));
        AmountType tax = CiiValues.amount(sums.tax());
        tax.setCurrencyID(content.currency());
        total.addTaxTotalAmount(tax);
        total.addGrandTotalAmount(CiiValues.amount(sums.gross()));
        total.addDuePayableAmount(CiiValues.amount(sums.gross()));
        return total;
    }
}
