package icequill.tax;

/** How a place treats a class of charges. */
public enum Taxability {
    TAXABLE,
    EXEMPT,
    /** Taxed when filters or parts were furnished on the same visit. */
    TAXABLE_IF_PARTS_ON_VISIT,
    /** The shop counts as the consumer and paid tax when it bought; none is charged again. */
    SELLER_CONSUMES
}
