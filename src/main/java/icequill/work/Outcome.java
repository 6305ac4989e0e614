package icequill.work;

/** Who bears a line of a visit. */
public enum Outcome {
    CHARGED,
    /** The agreement covers it. */
    INCLUDED,
    /** The maker's warranty pays; claimed from the machine's claim payer. */
    WARRANTY,
    /** Our own workmanship, done again. */
    CALLBACK,
    GOODWILL,
    /** Recommended and refused: kept on record, not done, not charged. */
    DECLINED;

    /** Whether the customer pays for it. */
    public boolean isCharged() {
        return this == CHARGED;
    }

    /** Whether the work was done or the thing was used. */
    public boolean isDone() {
        return this != DECLINED;
    }
}
