package icequill.rates;

import java.util.List;
import java.util.Optional;

/**
 * What changes a price, or what is paid of it: modifiers, fees, surcharges, discounts, terms of early payment, diagnoses taken off their
 * repairs, and what cards cost.
 */
public record Adjustments(List<Modifier> modifiers, List<Fee> fees, List<Surcharge> surcharges,
        List<ClassDiscount> classDiscounts,
        List<DocumentDiscount> documentDiscounts, Optional<EarlyPaymentTerms> earlyPayment,
        Optional<CardCost> cardCost, Optional<DiagnosisCredit> diagnosisCredit) {

    public Adjustments {
        modifiers = List.copyOf(modifiers);
        fees = List.copyOf(fees);
        surcharges = List.copyOf(surcharges);
        classDiscounts = List.copyOf(classDiscounts);
        documentDiscounts = List.copyOf(documentDiscounts);
    }

    Adjustments paid(Optional<EarlyPaymentTerms> terms) {
        return new Adjustments(modifiers, fees, surcharges, classDiscounts, documentDiscounts,
                terms.or(() -> earlyPayment), cardCost, diagnosisCredit);
    }
}
