package icequill.ledger.entries;

import icequill.problem.Code;
import icequill.problem.Place;
import icequill.problem.Problem;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Which of a kind turned out to be one with which others, as rows.
 *
 * @param kind customer or site
 */
record MergeRows(Handle handle, String kind) {

    private record Merged(String intoId, LocalDate mergedOn) {}

    static MergeRows ofCustomers(Handle handle) {
        return new MergeRows(handle, "customer");
    }

    static MergeRows ofSites(Handle handle) {
        return new MergeRows(handle, "site");
    }

    /** What one that was merged is now; empty for one that stands. */
    Optional<String> into(String id) {
        return handle.createQuery("SELECT into_id FROM " + kind + "_merged WHERE " + kind + "_id = :id").bind("id", id)
                .mapTo(String.class).findOne();
    }

    /** Those that were merged into one, by id. */
    List<String> of(String into) {
        return handle.createQuery("SELECT " + kind + "_id FROM " + kind + "_merged WHERE into_id = :into ORDER BY 1")
                .bind("into", into).mapTo(String.class).list();
    }

    /** What is said to whom wants to work on one that was merged. */
    Optional<Problem> problem(String id) {
        return handle.createQuery("SELECT into_id, merged_on FROM " + kind + "_merged WHERE " + kind + "_id = :id")
                .bind("id", id).mapTo(Merged.class).findOne()
                .map(merged -> new Problem(Code.NOT_ALLOWED, Place.NOWHERE, kind + " \"" + id + "\" was merged into \""
                        + merged.intoId() + "\" on " + merged.mergedOn(),
                        merged.intoId() + ", which has all that was its"));
    }

    /** One that was merged before goes on to another, so that nobody has to ask twice. */
    void redirect(String id, String into) {
        handle.createUpdate("UPDATE " + kind + "_merged SET into_id = :into WHERE " + kind + "_id = :id")
                .bind("into", into).bind("id", id).execute();
    }

    void insert(String id, String into, LocalDate day) {
        handle.createUpdate("INSERT INTO " + kind + "_merged (" + kind + "_id, into_id, merged_on)"
                + " VALUES (:id, :into, :day)").bind("id", id).bind("into", into).bind("day", day).execute();
    }
}
