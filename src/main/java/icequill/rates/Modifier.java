package icequill.rates;

import icequill.party.Wording;
import icequill.problem.Place;
import icequill.work.ChargeClass;
import icequill.work.Unit;
import javax.money.MonetaryAmount;

/**
 * A circumstance that changes the price: stairs, waiting, a further machine.
 *
 * @param price of one unit; of an hour, when counted in minutes
 * @param unit EACH or MINUTE
 * @param insteadOfLabor the visit's labor is not charged, because nobody was there to let us in
 */
public record Modifier(String id, Wording name, ChargeClass chargeClass, MonetaryAmount price, Unit unit,
        boolean insteadOfLabor, Place place) {}
