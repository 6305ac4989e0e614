package icequill.ledger.trail;

/** What happened to an entry. */
public enum TrailEvent {
    ADDED, CHANGED, RECORDED, WITHDRAWN, FORGOTTEN, ISSUED, BACKDATED, ADOPTED,
    /** Belongs to another now, or became one with another. */
    MERGED,
    /** Taken into the book out of the PDF of a paper. */
    TAKEN_FROM_PAPER,
    /** The book stood before there was a trail. */
    STOOD,
    /** Stood in the book before there was a trail, or before its tables took their present form. */
    TAKEN_OVER
}
