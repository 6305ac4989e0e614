package icequill.party;

/** What tax is rounded on; a shop chooses once and keeps to it. */
public enum TaxBasis {
    /** The lines are summed, then taxed and rounded once. */
    INVOICE,
    /** Each line is taxed and rounded, then summed. */
    ITEM
}
