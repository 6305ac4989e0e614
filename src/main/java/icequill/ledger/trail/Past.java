package icequill.ledger.trail;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * What the trail says that entries were just before one of its rows.
 *
 * @param before the row's number
 */
public record Past(Handle handle, long before) {

    /** As it was when a paper was issued; empty where the trail does not know of the paper. */
    public static Optional<Past> whenIssued(Handle handle, String number) {
        return handle.createQuery("SELECT min(number) FROM trail WHERE entry = :entry AND kind = :kind")
                .bind("entry", number).bind("kind", Subject.PAPER.name()).mapTo(Long.class).findOne()
                .map(row -> new Past(handle, row));
    }

    /** One entry; empty where there was none, or it is forgotten. */
    public Optional<PastRow> row(Subject subject, String entry) {
        return handle.createQuery(TrailRows.SELECT
                + "WHERE t.entry = :entry AND t.kind = :kind AND t.number < :before ORDER BY t.number DESC LIMIT 1")
                .bind("entry", entry).bind("kind", subject.name()).bind("before", before).mapTo(TrailRow.class)
                .findOne().flatMap(row -> row.after().data()).map(PastRow::of);
    }

    /** All entries of a kind that are not forgotten, by what they are called. */
    public List<PastRow> rows(Subject subject) {
        return handle.createQuery(TrailRows.SELECT + "WHERE t.kind = :kind AND t.number = (SELECT max(newest.number)"
                + " FROM trail newest WHERE newest.entry = t.entry AND newest.kind = t.kind AND newest.number < :before)"
                + " ORDER BY t.entry").bind("kind", subject.name()).bind("before", before).mapTo(TrailRow.class).list()
                .stream().flatMap(row -> row.after().data().stream()).map(PastRow::of).toList();
    }
}
