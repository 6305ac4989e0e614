package icequill.plans;

import icequill.agreement.Installment;
import icequill.explain.Fact;
import icequill.explain.Phrase;
import icequill.pricer.InstallmentPricing;
import icequill.tax.TaxCalculator;
import icequill.tax.TaxedVisit;
import java.time.LocalDate;

/** Taxes the payments of an agreement, each as a sale of its own. */
public record InstallmentTax(PlanSetting setting) {

    /**
     * A payment with its tax.
     *
     * @param day on which a certificate of exemption must hold
     */
    public TaxedVisit taxed(Installment payment, Phrase text, LocalDate day) {
        return TaxCalculator.tax(InstallmentPricing.price(payment, text), setting.place(), setting.shop().taxBasis(),
                setting.site().customer(), day);
    }

    /** As it would be by the rules that are known today. */
    TaxedVisit estimated(Installment payment) {
        return taxed(payment, Phrase.of("line.installment", Fact.number(payment.number(), "")), payment.due());
    }
}
