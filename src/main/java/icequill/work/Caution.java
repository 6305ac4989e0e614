package icequill.work;

/** What must be said to whoever does a task; the words files hold the sentences. */
public enum Caution {
    /** Labels, data sheets and the maker's manual come first. */
    LABEL_FIRST,
    GLOVES_AND_EYES,
    /** Acid and chlorine never in one step, nor in turn without full flushes and a pH reading. */
    NEVER_ACID_WITH_CHLORINE,
    /** Food-contact surfaces: sanitizer at label strength, strip reading recorded. */
    SANITIZER_AT_LABEL_STRENGTH,
    LOCK_OUT,
    QUALIFIED_ELECTRICAL,
    CERTIFIED_REFRIGERANT,
    SHARP_FINS,
    NYLON_BRUSH_ONLY,
    DISCARD_FIRST_ICE,
    STAY_WITH_TIMER,
    ROOF_EDGE
}
