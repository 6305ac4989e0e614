package icequill.forecast;

import icequill.problem.Place;

/**
 * A kind of call as somebody entered it, right or wrong.
 *
 * @param share of the calls of its cause
 * @param charge in minor units
 */
public record EnteredKind(double share, long charge, Place place) {}
