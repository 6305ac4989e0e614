package icequill.agreement;

import icequill.explain.Phrase;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A visit of an agreement's calendar.
 *
 * @param begun months of the term that have begun before it was due
 * @param filtersDue whether water filters are changed on it
 * @param moved why it is not on the day it was due
 */
public record PlannedVisit(int begun, LocalDate date, Slot slot, boolean filtersDue, Optional<Phrase> moved) {}
