package icequill.work;

import icequill.party.Wording;

/** A labor band: a class of hours with its own prices. */
public record Band(String id, Wording name) {}
