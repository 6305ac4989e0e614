package icequill.rates;

import java.util.List;
import java.util.Optional;

/**
 * What changes a price, or what is paid of it: modifiers, fees, surcharges, discounts, terms of early payment, diagnoses taken off their
 * repairs, what cards cost, and what is paid for work under a warranty.
 */
public record Adjustments(List<Modifier> modifiers, List<Fee> fees, List<Surcharge> surcharges,
        List<ClassDiscount> classDiscounts,
        List<DocumentDiscount> documentDiscounts, Optional<EarlyPaymentTerms> earlyPayment,
        Optional<CardCost> cardCost, Optional<DiagnosisCredit> diagnosisCredit,
        List<WarrantyPayer> warrantyPayers) {

    public Adjustments {
        modifiers = List.copyOf(modifiers);
        fees = List.copyOf(fees);
        surcharges = List.copyOf(surcharges);
        classDiscounts = List.copyOf(classDiscounts);
        documentDiscounts = List.copyOf(documentDiscounts);
        warrantyPayers = List.copyOf(warrantyPayers);
    }

    Adjustments paid(Optional<EarlyPaymentTerms> terms) {
        return new Adjustments(modifiers, fees, surcharges, classDiscounts, documentDiscounts,
                terms.or(() -> earlyPayment), cardCost, diagnosisCredit, warrantyPayers);
    }
}
