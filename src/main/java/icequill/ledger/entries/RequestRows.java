package icequill.ledger.entries;

import icequill.ledger.store.Column;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.Update;

/** Requests as rows. */
final class RequestRows {

    private static final String SELECT = "SELECT kind, id, site_id, data FROM request ";

    private RequestRows() {
    }

    static Optional<RequestEntry> find(Handle handle, String kind, String id) {
        return handle.createQuery(SELECT + "WHERE kind = :kind AND id = :id").bind("kind", kind).bind("id", id)
                .map(RequestRows::read).findOne();
    }

    static List<RequestEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY kind, id").map(RequestRows::read).list();
    }

    static List<RequestEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY kind, id").bind("site", site)
                .map(RequestRows::read).list();
    }

    static void insert(Handle handle, RequestEntry request, Instant now) {
        bound(handle.createUpdate("INSERT INTO request (kind, id, site_id, data, noted_at)"
                + " VALUES (:kind, :id, :site, :data, :now)"), request, now).execute();
    }

    static void update(Handle handle, RequestEntry request, Instant now) {
        bound(handle.createUpdate("UPDATE request SET site_id = :site, data = :data, noted_at = :now"
                + " WHERE kind = :kind AND id = :id"), request, now).execute();
    }

    private static Update bound(Update statement, RequestEntry request, Instant now) {
        return statement.bind("kind", request.kind()).bind("id", request.id()).bind("site", request.site())
                .bind("data", request.data()).bind("now", now.toString());
    }

    static RequestEntry read(RowView row) {
        return new RequestEntry(Column.text(row, "kind"), Column.text(row, "id"), Column.text(row, "site_id"),
                Column.text(row, "data"));
    }
}
