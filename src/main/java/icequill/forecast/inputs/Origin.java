package icequill.forecast.inputs;

import icequill.problem.Check;

/**
 * Where an expected figure comes from.
 *
 * @param number of visits or runs by which it is known; 0 for all other kinds
 */
public record Origin(Kind kind, int number) {

    public static final Origin ESTIMATE = new Origin(Kind.ESTIMATE, 0);
    public static final Origin CUSTOMER = new Origin(Kind.CUSTOMER, 0);

    /** Who says so. */
    public enum Kind {
        /** The shop's own guess. */
        ESTIMATE,
        /** The customer. */
        CUSTOMER,
        /** Visits that were counted. */
        VISITS,
        /** Runs from a cleaning on, of the shop's own records. */
        RUNS
    }

    public Origin {
        Check.that((kind == Kind.VISITS || kind == Kind.RUNS) == (number > 0), number + " of " + kind);
    }

    public static Origin visits(int number) {
        return new Origin(Kind.VISITS, number);
    }

    public static Origin runs(int number) {
        return new Origin(Kind.RUNS, number);
    }
}
