package icequill.account;

/** How money is paid. The names are stored, so they stay. */
public enum Way {
    TRANSFER, CHECK, CARD, CASH, DIRECT_DEBIT, OTHER
}
