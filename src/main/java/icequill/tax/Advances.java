package icequill.tax;

/**
 * When what is asked for before the end of a work is taxed. Data of a place, to be checked with an adviser.
 */
public record Advances(Deposits deposits, Retainages retainages) {

    /** When a deposit is taxed. */
    public enum Deposits {
        /** With the final invoice, as a part of the whole. */
        AT_FINAL,
        /** When it is asked for (2006/112/EC Art. 65: VAT is due on payments on account). */
        AT_DEPOSIT
    }

    /** When what is held back is taxed. */
    public enum Retainages {
        /** With the progress invoice from which it is held back. */
        WITH_PROGRESS,
        /** When it is released. */
        AT_RELEASE
    }

    /** Where a place says nothing: VAT with each payment, sales tax with the final invoice. */
    public static Advances usual(TaxPlace.Regime regime) {
        return new Advances(regime == TaxPlace.Regime.VAT ? Deposits.AT_DEPOSIT : Deposits.AT_FINAL,
                Retainages.WITH_PROGRESS);
    }
}
