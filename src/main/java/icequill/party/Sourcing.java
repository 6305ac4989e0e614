package icequill.party;

/** Whose place decides the tax. It is never the bill-to address. */
public enum Sourcing {
    /** Where the machine stands. */
    MACHINE,
    /** Where the shop is, for places that tax services at the seller's. */
    SHOP
}
