package icequill.work;

import icequill.problem.Place;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * What the customer's own office ordered.
 *
 * @param limit not to be exceeded before tax
 * @param approver who allowed the work, or who raised the limit
 */
public record PurchaseOrder(Optional<String> purchaseOrder, Optional<MonetaryAmount> limit, Optional<String> approver,
        Place place) {

    public static final PurchaseOrder NONE = new PurchaseOrder(Optional.empty(), Optional.empty(), Optional.empty(),
            Place.NOWHERE);

    /** The same; where it has no number, the one that stands for all such work. */
    public PurchaseOrder standing(Optional<String> number) {
        return new PurchaseOrder(purchaseOrder.or(() -> number), limit, approver, place);
    }
}
