package icequill.agreement;

/** How often an agreement is billed. */
public enum Billing {
    YEARLY(12), QUARTERLY(3), MONTHLY(1);

    private final int months;

    Billing(int months) {
        this.months = months;
    }

    /** From one installment to the next. */
    public int months() {
        return months;
    }
}
