package icequill.forecast.fit;

import icequill.party.SiteKind;
import icequill.problem.Place;

/**
 * One stretch of a side's life from the shop's records: from an age of the dirt to the stop that it brought about, or to an age that it
 * reached without one.
 *
 * @param entered months of dirt with which it came under watch, from 0; whatever stopped before is not on record (left truncation)
 * @param atLeast months of dirt that it reached without a stop, from those with which it entered
 * @param atMost the same where the end is known to the day; later where a stop is known to have come in between
 * @param stopped whether it ended in a stop; otherwise it is only known to have run so long
 * @param place where it was recorded
 */
public record Run(SiteKind kind, double entered, double atLeast, double atMost, boolean stopped, Place place) {

    /** Watched from a clean side on, and known to the day. */
    public Run(SiteKind kind, double months, boolean stopped, Place place) {
        this(kind, 0, months, months, stopped, place);
    }

    /** Whether a stop is only known to have come between two ages. */
    boolean isBetween() {
        return stopped && atMost > atLeast;
    }

    /** Months of dirt at the end; half way where a stop came in between. */
    double months() {
        return stopped ? (atLeast + atMost) / 2 : atLeast;
    }
}
