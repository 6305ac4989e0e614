package icequill.work;

/** What must be said to whoever does a task; the words files hold the sentences. */
public enum Caution {
    /** Labels, data sheets and the maker's manual come first. */
    LABEL_FIRST(true), GLOVES_AND_EYES(true), LOCK_OUT(false),
    /** Acid and chlorine never in one step, nor in turn without full flushes and a pH reading. */
    NEVER_ACID_WITH_CHLORINE(true), STAY_WITH_TIMER(false),
    /** Food-contact surfaces: sanitizer at label strength, strip reading recorded. */
    SANITIZER_AT_LABEL_STRENGTH(true),
    /** On other surfaces only, dosed by its strength, rinsed. */
    BLEACH_BY_STRENGTH(true), SHARP_FINS(false), NYLON_BRUSH_ONLY(false), ROOF_EDGE(false),
    CERTIFIED_REFRIGERANT(true), QUALIFIED_ELECTRICAL(true), DISCARD_FIRST_ICE(true),
    /** Local codes and licensed practice decide. */
    LOCAL_RULES(true);

    private final boolean always;

    Caution(boolean always) {
        this.always = always;
    }

    /** Whether it stands on every sheet, whatever is done. */
    public boolean isAlways() {
        return always;
    }
}
