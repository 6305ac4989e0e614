package icequill.work;

/** What a cleaner or sanitizer is, as far as it must be kept from others. */
public enum Chemistry {
    /** Descalers. With chlorine they give off chlorine gas. */
    ACID,
    /** Bleach and other sanitizers that set chlorine free. */
    CHLORINE, OTHER
}
