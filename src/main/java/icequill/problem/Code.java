package icequill.problem;

/** The kinds of things that can be wrong with input. Stable names: they appear in JSON output. */
public enum Code {
    /** The file cannot be read or is not YAML. */
    UNREADABLE,
    /** The file, or something in it, is larger or deeper than the program accepts. */
    TOO_LARGE,
    UNKNOWN_KEY,
    DUPLICATE_KEY,
    MISSING,
    WRONG_TYPE,
    /** A value of the right type that is not among the allowed ones. */
    NOT_ALLOWED,
    OUT_OF_RANGE,
    /** A name that refers to nothing: a machine, a material, a grade. */
    UNKNOWN_NAME,
    DUPLICATE_NAME,
    UNKNOWN_CURRENCY,
    /** Two dated entries claim the same day. */
    OVERLAP,
    /** No dated entry covers the day asked for. */
    NO_RATES,
    /** Two moments in the wrong order. */
    WRONG_ORDER,
    /** A local time skipped when clocks go forward. */
    NO_SUCH_TIME,
    /** A local time that occurs twice when clocks go back. */
    AMBIGUOUS_TIME,
    NO_TAX_RULE,
    CERTIFICATE,
    /** Nobody who comes may be given the task. */
    NOT_QUALIFIED,
    /** The price is above what the customer allowed. */
    OVER_LIMIT,
    /** A value that came with the program and that the shop has not replaced by its own. */
    AS_SHIPPED,
    /** A character that no font of the program can draw. */
    NO_GLYPH,
    TEMPLATE,
    ALREADY_EXISTS,
    CANNOT_WRITE,
    /** What something was worked out from was changed by somebody else before it could be stored. */
    CHANGED_MEANWHILE,
    /** Whether something was stored is not known yet. */
    OUTCOME_UNKNOWN,
    /** Somebody else is writing in the shop's book. */
    BOOK_IN_USE,
    /** The shop's book, or a paper in it, is not as it was written. */
    BOOK_DAMAGED
}
