package icequill.agreement;

import icequill.explain.Fact;
import icequill.explain.Phrase;
import java.time.LocalDate;
import java.util.Optional;
import javax.money.MonetaryAmount;

/**
 * The rest of a term that a new owner takes over from the agreement of the former one.
 *
 * @param of the number of that agreement
 * @param from the first day of the new owner, within the term after its first day
 * @param price of the rest, before tax, in whole minor units; not negative
 * @param visit the day of the first visit of the term that goes over, which may be late by then; empty where none is left
 */
public record RestOfTerm(String of, LocalDate from, MonetaryAmount price, Optional<LocalDate> visit) {

    /** The same for a site that comes in later: it costs nothing before, and all visits from then on are the new owner's. */
    public RestOfTerm coming(LocalDate day) {
        return new RestOfTerm(of, from, price.multiply(0), Optional.of(day));
    }

    /** A visit of the term as it is due to the new owner, not before his first day; empty where it is none of his. */
    public Optional<PlannedVisit> due(PlannedVisit whole) {
        return visit.filter(first -> !whole.date().isBefore(first)).map(first -> whole.date().isBefore(from)
                ? new PlannedVisit(whole.begun(), from, whole.slot(), whole.filtersDue(),
                        Optional.of(Phrase.of("reason.late-taken-over", new Fact.Day(whole.date()))))
                : whole);
    }
}
