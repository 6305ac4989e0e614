package icequill.agreement;

/** How often an agreement is billed. */
public enum Billing {
    YEARLY(12), QUARTERLY(3), MONTHLY(1),
    /** Monthly, but for months in which the site is closed. */
    OPEN_MONTHS(1);

    private final int months;

    Billing(int months) {
        this.months = months;
    }

    /** From one installment to the next. */
    public int months() {
        return months;
    }
}
