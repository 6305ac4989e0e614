package icequill.agreement;

/** How an agreement goes on after its term where nobody refuses. */
public enum GoingOn {
    /** By another term, from the day after. */
    BY_TERM,
    /** By another term, from the same day of a later year; between the two there is none. */
    NEXT_SEASON,
    /** By the month, until somebody gives notice. */
    BY_MONTH
}
