package icequill.work;

/** What of a machine a customer called for, as the technician found it. */
public enum CallSide {
    /** A dirty condenser. */
    CONDENSER,
    /** Scale or slime where the water runs. */
    WATER,
    /** A part, the supply, or anything else. */
    OTHER
}
