package icequill.tax;

/** When minutes or visits that are sold ahead are taxed. Data of a place, to be checked with an adviser. */
public enum BlockTax {
    /** When they are sold, by what the line's class says (2006/112/EC Art. 30b(1): a single-purpose voucher's transfer is the supply). */
    AT_SALE,
    /** When they are used, at the value of what is used (2006/112/EC Art. 30b(2): a multi-purpose voucher is taxed when it is redeemed). */
    AT_USE
}
