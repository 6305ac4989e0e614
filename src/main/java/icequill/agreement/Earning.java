package icequill.agreement;

/** How an agreement's price, paid ahead, is earned; one way for all agreements of a shop. */
public enum Earning {
    /** Evenly, each day of the term the same. */
    DAYS,
    /** By the visits done, each in proportion to its price at list. */
    VISITS
}
