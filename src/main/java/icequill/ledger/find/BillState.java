package icequill.ledger.find;

/** Where an invoice is in its life, by what was paid and given back: what is taken off for paying early is not among these sums. */
public enum BillState {

    /** Something of it is owed still. */
    OPEN("p.kind = 'INVOICE' AND p.gross_minor > " + BillState.PAID_IN + " + " + BillState.GIVEN_BACK),
    /** Open, and something was paid. */
    PART_PAID(BillState.OF_PAYMENTS + " AND " + BillState.PAID_IN + " > 0 AND p.gross_minor > " + BillState.PAID_IN
            + " + " + BillState.GIVEN_BACK),
    /** Not open any more, and not for credit notes alone. */
    PAID(BillState.OF_PAYMENTS + " AND " + BillState.PAID_IN + " > 0 AND p.gross_minor <= " + BillState.PAID_IN + " + "
            + BillState.GIVEN_BACK),
    /** Credit notes gave all of it back. The first condition finds the few that have any. */
    CREDITED("p.number IN (SELECT corrects FROM paper WHERE corrects IS NOT NULL) AND p.gross_minor = "
            + BillState.GIVEN_BACK);

    private static final String GIVEN_BACK = "(SELECT coalesce(sum(c.gross_minor), 0) FROM paper c"
            + " WHERE c.corrects = p.number)";
    private static final String PAID_IN = "(SELECT coalesce(sum(s.amount_minor), 0) FROM payment_share s"
            + " WHERE s.bill = p.number AND NOT EXISTS"
            + " (SELECT 1 FROM payment_withdrawn x WHERE x.payment_id = s.payment_id))";
    private static final String OF_PAYMENTS = "p.kind = 'INVOICE' AND p.number IN (SELECT bill FROM payment_share)";

    private final String sql;

    BillState(String sql) {
        this.sql = sql;
    }

    /** Whether what it is told by leads to its papers. */
    boolean isRare() {
        return this != OPEN;
    }

    /** A condition on the row {@code p} of a paper. */
    String sql() {
        return sql;
    }
}
