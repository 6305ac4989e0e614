package icequill.einvoice;

import icequill.money.Amounts;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import javax.money.MonetaryAmount;
import un.unece.uncefact.data.standard.qualifieddatatype._100.FormattedDateTimeType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.NoteType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeAllowanceChargeType;
import un.unece.uncefact.data.standard.reusableaggregatebusinessinformationentity._100.TradeTaxType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.AmountType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.DateTimeType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.IndicatorType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.QuantityType;
import un.unece.uncefact.data.standard.unqualifieddatatype._100.TextType;

/** Small things of CII. */
final class CiiValues {

    /** UNTDID 2379: a date as year, month and day without signs between. */
    private static final String DATE = "102";

    private CiiValues() {
    }

    static DateTimeType date(LocalDate date) {
        DateTimeType target = new DateTimeType();
        target.setDateTimeString(text(date)).setFormat(DATE);
        return target;
    }

    static FormattedDateTimeType formatted(LocalDate date) {
        FormattedDateTimeType target = new FormattedDateTimeType();
        target.setDateTimeString(text(date)).setFormat(DATE);
        return target;
    }

    /** The amount with the decimals of its currency, which CII names once for all. */
    static AmountType amount(MonetaryAmount amount) {
        return new AmountType(new BigDecimal(Amounts.plain(amount)));
    }

    static QuantityType quantity(BigDecimal number, String unit) {
        QuantityType target = new QuantityType(number);
        target.setUnitCode(unit);
        return target;
    }

    static NoteType note(String text) {
        NoteType note = new NoteType();
        note.addContent(new TextType(text));
        return note;
    }

    static TradeTaxType category(Category category) {
        TradeTaxType tax = new TradeTaxType();
        tax.setTypeCode(category.scheme());
        tax.setCategoryCode(category.code());
        category.percent().ifPresent(percent -> tax.setRateApplicablePercent(percent.value()));
        return tax;
    }

    /** BG-20, BG-21 and BG-27. */
    static TradeAllowanceChargeType adjustment(Adjustment adjustment) {
        IndicatorType charge = new IndicatorType();
        charge.setIndicator(adjustment.isCharge());
        TradeAllowanceChargeType target = new TradeAllowanceChargeType();
        target.setChargeIndicator(charge);
        adjustment.figured().ifPresent(base -> {
            target.setCalculationPercent(base.percent().value());
            target.setBasisAmount(amount(base.amount()));
        });
        target.addActualAmount(amount(adjustment.amount()));
        target.setReasonCode(adjustment.code());
        target.setReason(adjustment.reason());
        adjustment.category().map(CiiValues::category).ifPresent(target::addCategoryTradeTax);
        return target;
    }

    private static String text(LocalDate date) {
        return date.format(DateTimeFormatter.BASIC_ISO_DATE);
    }
}
