package icequill.life.quote;

/** How the shop learned that a quote was accepted. */
public enum AcceptanceWay {
    /** The paper came back with a signature. */
    SIGNED, MAIL, TELEPHONE, IN_PERSON,
    /** The customer's purchase order says so. */
    PURCHASE_ORDER
}
