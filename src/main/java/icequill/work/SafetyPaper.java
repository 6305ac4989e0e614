package icequill.work;

/** A paper by which people work at a machine, or live beside it. */
public enum SafetyPaper {
    /** Technicians. */
    WORK_SHEET,
    /** The customer, after the visit. */
    VISIT_RECORD,
    /** The customer's own staff at a condenser. */
    BRUSHING_SHEET
}
