package icequill.office.asking;

/**
 * A visit of the book that may be changed.
 *
 * @param site by id, as it is called now
 * @param isPlanned whether it is still to come
 * @param version a hash of all that the book says of it
 * @param told by the keys of its form
 */
public record KnownVisit(String id, String site, boolean isPlanned, String version, Draft told) {

    /** Whether it is the plan of a repair that is to be quoted. */
    public boolean isToBeQuoted() {
        return isPlanned && told.values().containsKey(TypedVisit.QUOTE);
    }
}
