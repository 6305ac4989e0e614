package icequill.work;

/** What is measured and written down during a task; the words files hold the names and units. */
public enum Reading {
    FREEZE_TIME, HARVEST_TIME, ICE_WEIGHT, AIR_OFF_CONDENSER, WATER_PRESSURE, TIMER_START, TIMER_STOP,
    /** Which disconnect or breaker was locked. */
    LOCKED_AT,
    /** Of the water that drains, after flushing. */
    PH,
    /** Of the sanitizer, on a test strip. */
    STRIP,
    /** Of a machine in the condition in which it is found. */
    LAST_CLEANED, SCALE_FOUND, SLIME_FOUND, CONDENSER_FOUND, LEAKS_FOUND
}
