package icequill.rates;

import icequill.problem.Check;

/**
 * Where an expected figure comes from.
 *
 * @param visits by which it is known; 0 for all other kinds
 */
public record Origin(Kind kind, int visits) {

    public static final Origin ESTIMATE = new Origin(Kind.ESTIMATE, 0);
    public static final Origin CUSTOMER = new Origin(Kind.CUSTOMER, 0);

    /** Who says so. */
    public enum Kind {
        /** The shop's own guess. */
        ESTIMATE,
        /** The customer. */
        CUSTOMER,
        /** Visits that were counted. */
        VISITS
    }

    public Origin {
        Check.that((kind == Kind.VISITS) == (visits > 0), "visits of " + kind + ": " + visits);
    }

    public static Origin visits(int number) {
        return new Origin(Kind.VISITS, number);
    }
}
