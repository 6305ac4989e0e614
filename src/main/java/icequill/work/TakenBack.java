package icequill.work;

/** Why something goes to the customer instead of being charged; nothing else may be negative. */
public enum TakenBack {
    /** The old part, whose maker pays for it. */
    CORE_RETURN,
    /** A part that was charged and is not needed. */
    RETURNED_PART,
    /** An old machine taken in payment. */
    TRADE_IN
}
