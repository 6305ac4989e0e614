package icequill.rates;

import icequill.money.Reduction;
import icequill.party.Wording;
import icequill.problem.Place;

/** A discount on the whole of a paper, taken last and shared over its lines. */
public record DocumentDiscount(String id, Wording name, Reduction off, Place place) {}
