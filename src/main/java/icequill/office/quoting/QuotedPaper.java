package icequill.office.quoting;

/** What is printed of a maintenance quote. */
public enum QuotedPaper {
    QUOTE, COMPARISON, BRUSHING
}
