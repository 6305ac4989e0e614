package icequill.work;

import icequill.money.Percent;
import icequill.money.Reduction;
import icequill.problem.Place;

/**
 * A discount that no rates know, for this once.
 *
 * @param reason as the office wrote it, printed for the customer
 */
public record OneOff(Reduction off, String reason, Place place) {

    /** One on all charges of a class, the service call and labor among them. */
    public record OnClass(ChargeClass chargeClass, Percent percent, String reason, Place place) {}
}
