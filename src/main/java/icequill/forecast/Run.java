package icequill.forecast;

import icequill.party.SiteKind;
import icequill.problem.Place;

/**
 * One stretch of a side's life from the shop's records: from a cleaning or brushing to the stop that dirt brought about, or to the
 * next cleaning or brushing without one.
 *
 * @param months how long, above 0
 * @param stopped whether it ended in a stop; otherwise it is only known to have run so long
 * @param place where it was recorded
 */
public record Run(SiteKind kind, double months, boolean stopped, Place place) {}
