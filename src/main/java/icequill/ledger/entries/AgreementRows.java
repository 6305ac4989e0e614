package icequill.ledger.entries;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Agreements as rows. */
final class AgreementRows {

    private static final String SELECT = "SELECT id, number, site_id, data FROM agreement ";

    private AgreementRows() {
    }

    static Optional<AgreementEntry> find(Handle handle, String idOrNumber) {
        return handle.createQuery(SELECT + "WHERE id = :name OR number = :name ORDER BY id").bind("name", idOrNumber)
                .mapTo(AgreementEntry.class).findFirst();
    }

    static List<AgreementEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY id").mapTo(AgreementEntry.class).list();
    }

    static List<AgreementEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY id").bind("site", site)
                .mapTo(AgreementEntry.class).list();
    }

    static void insert(Handle handle, AgreementEntry agreement, Instant now) {
        handle.createUpdate("INSERT INTO agreement (id, number, site_id, data, noted_at)"
                + " VALUES (:id, :number, :site, :data, :now)")
                .bindMethods(agreement).bind("now", now).execute();
    }

    static void update(Handle handle, AgreementEntry agreement, Instant now) {
        handle.createUpdate("UPDATE agreement SET number = :number, site_id = :site, data = :data,"
                + " noted_at = :now WHERE id = :id")
                .bindMethods(agreement).bind("now", now).execute();
    }
}
