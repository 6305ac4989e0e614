package icequill.work;

/** What must be said to whoever does a task, by {@link Hazard}; the words files hold the sentences. */
public enum Caution {
    /** Labels, data sheets and the maker's manual come first. */
    LABEL_FIRST,
    /** Cleaners and sanitizers but acid. */
    GLOVES_AND_EYES,
    /** Chemical-resistant gloves, closed goggles, cleaner into water. */
    ACID_GLOVES,
    /** Plug pulled, and in the worker's own hand. */
    UNPLUGGED,
    /** Locked and tagged at the disconnect or breaker, stored charge waited for. */
    LOCK_OUT, BOTH_FEEDS, CLEAR_BEFORE_POWER, AUGER_STOPPED, CURTAIN_CLOSED,
    /** Chlorine never in one step with what makes a gas of it, nor in turn without full flushes and a pH reading. */
    NEVER_ACID_WITH_CHLORINE,
    /** A sign on a machine that is left circulating. */
    CHEMICALS_INSIDE, STAY_WITH_TIMER,
    /** Food-contact surfaces: sanitizer at label strength, strip reading recorded. */
    SANITIZER_AT_LABEL_STRENGTH,
    /** On other surfaces only, dosed by its strength, rinsed. */
    BLEACH_BY_STRENGTH, SHARP_FINS, NYLON_BRUSH_ONLY, ROOF_EDGE, LADDER, LET_PRESSURE_OUT,
    /** For technicians at a machine whose refrigerant burns, or is not recorded. */
    NO_FLAME,
    /** For the customer's people beside such a machine. */
    GAS_SUSPECTED, CERTIFIED_REFRIGERANT, QUALIFIED_ELECTRICAL, DISCARD_FIRST_ICE,
    /** Local codes and licensed practice decide. */
    LOCAL_RULES
}
