package icequill.einvoice;

import com.helger.xsds.ccts.cct.schemamodule.AmountType;
import icequill.money.Amounts;
import java.math.BigDecimal;
import java.util.List;
import javax.money.MonetaryAmount;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.AllowanceChargeType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.MonetaryTotalType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.TaxCategoryType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.TaxSchemeType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.TaxSubtotalType;
import oasis.names.specification.ubl.schema.xsd.commonaggregatecomponents_21.TaxTotalType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.AllowanceChargeReasonType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.AllowanceTotalAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.BaseAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.ChargeTotalAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.LineExtensionAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.PayableAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.TaxAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.TaxExclusiveAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.TaxExemptionReasonType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.TaxInclusiveAmountType;
import oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.TaxableAmountType;

/** Amounts, allowances, charges and taxes in UBL, each with its currency. */
record UblAmounts(String currency) {

    /** The amount with the decimals of its currency. */
    <T extends AmountType> T of(MonetaryAmount amount, T target) {
        target.setValue(new BigDecimal(Amounts.plain(amount)));
        target.setCurrencyID(currency);
        return target;
    }

    List<AllowanceChargeType> adjustments(List<Adjustment> adjustments) {
        return adjustments.stream().map(this::adjustment).toList();
    }

    /** BG-23; in plain UBL the tax of each authority. */
    List<TaxTotalType> taxes(InvoiceContent content) {
        TaxTotalType total = new TaxTotalType();
        total.setTaxAmount(of(content.sums().tax(), new TaxAmountType()));
        content.taxes().forEach(share -> total.addTaxSubtotal(subtotal(share)));
        return List.of(total);
    }

    /** BG-22. */
    MonetaryTotalType sums(InvoiceContent content) {
        Sums sums = content.sums();
        MonetaryTotalType total = new MonetaryTotalType();
        total.setLineExtensionAmount(of(sums.lines(), new LineExtensionAmountType()));
        total.setTaxExclusiveAmount(of(sums.net(), new TaxExclusiveAmountType()));
        total.setTaxInclusiveAmount(of(sums.gross(), new TaxInclusiveAmountType()));
        if (!sums.allowances().isZero()) {
            total.setAllowanceTotalAmount(of(sums.allowances(), new AllowanceTotalAmountType()));
        }
        if (!sums.charges().isZero()) {
            total.setChargeTotalAmount(of(sums.charges(), new ChargeTotalAmountType()));
        }
        total.setPayableAmount(of(sums.gross(), new PayableAmountType()));
        return total;
    }

    static TaxCategoryType category(Category category) {
        TaxSchemeType scheme = UblParties.scheme(category.scheme());
        category.name().ifPresent(scheme::setName);
        TaxCategoryType target = new TaxCategoryType();
        target.setID(category.code());
        category.percent().ifPresent(percent -> target.setPercent(percent.value()));
        target.setTaxScheme(scheme);
        return target;
    }

    private AllowanceChargeType adjustment(Adjustment adjustment) {
        AllowanceChargeType target = new AllowanceChargeType();
        target.setChargeIndicator(adjustment.isCharge());
        target.setAllowanceChargeReasonCode(adjustment.code());
        target.addAllowanceChargeReason(new AllowanceChargeReasonType(adjustment.reason()));
        target.setAmount(of(adjustment.amount(),
                new oasis.names.specification.ubl.schema.xsd.commonbasiccomponents_21.AmountType()));
        adjustment.figured().ifPresent(base -> {
            target.setMultiplierFactorNumeric(base.percent().value());
            target.setBaseAmount(of(base.amount(), new BaseAmountType()));
        });
        adjustment.category().map(UblAmounts::category).ifPresent(target::addTaxCategory);
        return target;
    }

    private TaxSubtotalType subtotal(TaxShare share) {
        TaxCategoryType category = category(share.category());
        share.reasonCode().ifPresent(category::setTaxExemptionReasonCode);
        share.reason().map(TaxExemptionReasonType::new).ifPresent(category::addTaxExemptionReason);
        TaxSubtotalType subtotal = new TaxSubtotalType();
        subtotal.setTaxableAmount(of(share.base(), new TaxableAmountType()));
        subtotal.setTaxAmount(of(share.tax(), new TaxAmountType()));
        subtotal.setTaxCategory(category);
        return subtotal;
    }
}
