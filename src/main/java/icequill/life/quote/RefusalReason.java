package icequill.life.quote;

/** Why a customer did not take what was offered. */
public enum RefusalReason {
    PRICE, NOT_NOW, ANOTHER_SHOP, OWN_STAFF, MACHINE_REPLACED, SITE_CLOSES,
    /** Nobody answered, and the shop gave up asking. */
    NO_ANSWER, OTHER
}
