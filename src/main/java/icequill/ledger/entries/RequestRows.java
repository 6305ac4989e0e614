package icequill.ledger.entries;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Requests as rows. */
final class RequestRows {

    private static final String SELECT = "SELECT kind, id, site_id, data FROM request ";

    private RequestRows() {
    }

    static Optional<RequestEntry> find(Handle handle, String kind, String id) {
        return handle.createQuery(SELECT + "WHERE kind = :kind AND id = :id").bind("kind", kind).bind("id", id)
                .mapTo(RequestEntry.class).findOne();
    }

    static List<RequestEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY kind, id").mapTo(RequestEntry.class).list();
    }

    static List<RequestEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY kind, id").bind("site", site)
                .mapTo(RequestEntry.class).list();
    }

    static void insert(Handle handle, RequestEntry request, Instant now) {
        handle.createUpdate("INSERT INTO request (kind, id, site_id, data, noted_at)"
                + " VALUES (:kind, :id, :site, :data, :now)")
                .bindMethods(request).bind("now", now).execute();
    }

    static void update(Handle handle, RequestEntry request, Instant now) {
        handle.createUpdate("UPDATE request SET site_id = :site, data = :data, noted_at = :now"
                + " WHERE kind = :kind AND id = :id")
                .bindMethods(request).bind("now", now).execute();
    }
}
