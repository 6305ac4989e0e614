package icequill.agreement;

import icequill.party.Wording;

/** One of the visits of a tier's year. */
public record Slot(Wording name, Scope scope) {}
