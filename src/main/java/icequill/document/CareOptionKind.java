package icequill.document;

/** The ways of having machines looked after that a comparison sheet sets side by side. */
public enum CareOptionKind {
    /** Nobody cleans before a machine stops. */
    PAY_PER_CALL,
    /** The visits of a plan, each ordered by itself. */
    BOOKED_SINGLY,
    AGREEMENT,
    /** Full cleanings ordered every so many months. */
    INTERVAL
}
