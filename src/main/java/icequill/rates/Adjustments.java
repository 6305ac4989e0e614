package icequill.rates;

import java.util.List;

/** What changes a price: modifiers, fees, surcharges and discounts. */
public record Adjustments(List<Modifier> modifiers, List<Fee> fees, List<Surcharge> surcharges,
        List<ClassDiscount> classDiscounts,
        List<DocumentDiscount> documentDiscounts) {

    public Adjustments {
        modifiers = List.copyOf(modifiers);
        fees = List.copyOf(fees);
        surcharges = List.copyOf(surcharges);
        classDiscounts = List.copyOf(classDiscounts);
        documentDiscounts = List.copyOf(documentDiscounts);
    }
}
