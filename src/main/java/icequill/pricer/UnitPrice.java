package icequill.pricer;

import icequill.work.Unit;
import javax.money.MonetaryAmount;

/** A price for one of a unit, which for time is the hour though the quantity counts minutes. */
public record UnitPrice(MonetaryAmount amount, Unit per) {}
