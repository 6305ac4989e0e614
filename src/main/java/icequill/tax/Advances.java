package icequill.tax;

/**
 * When what is asked for before the end of a work is taxed. Data of a place, to be checked with an adviser.
 */
public record Advances(Deposits deposits, Retainages retainages) {

    /** As VAT has it where a place says nothing: with each payment. */
    public static final Advances USUAL_OF_VAT = new Advances(Deposits.AT_DEPOSIT, Retainages.WITH_PROGRESS);
    /** As sales tax has it where a place says nothing: with the final invoice. */
    public static final Advances USUAL_OF_SALES_TAX = new Advances(Deposits.AT_FINAL, Retainages.WITH_PROGRESS);

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
}
