package icequill.work;

/** How a task stands to dust in the air. Dusty work comes before food-contact surfaces are sanitized, not beside it. */
public enum DustLevel {
    NEITHER,
    /** It raises dust. */
    RAISES,
    /** It leaves surfaces clean that dust would spoil. */
    SPOILED
}
