package icequill.answer.history;

/** Where a visit is in its life. */
public enum VisitState {
    PLANNED,
    /** And not billed: an invoice that was given back whole bills nothing. */
    DONE, BILLED, WITHDRAWN
}
