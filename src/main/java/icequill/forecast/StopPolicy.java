package icequill.forecast;

/** What a call does to the clock of the side it was for. */
public enum StopPolicy {
    /** Its work cleans or brushes that side, and is priced in. */
    RESETS,
    /** It only makes the machine run again; the dirt stays. */
    RESTARTS
}
