package icequill.rates;

import java.util.List;

/** What changes a price: modifiers, surcharges and discounts. */
public record Adjustments(List<Modifier> modifiers, List<Surcharge> surcharges, List<ClassDiscount> classDiscounts,
        List<DocumentDiscount> documentDiscounts) {

    public Adjustments {
        modifiers = List.copyOf(modifiers);
        surcharges = List.copyOf(surcharges);
        classDiscounts = List.copyOf(classDiscounts);
        documentDiscounts = List.copyOf(documentDiscounts);
    }
}
