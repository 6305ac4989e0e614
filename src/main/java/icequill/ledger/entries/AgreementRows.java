package icequill.ledger.entries;

import icequill.ledger.store.Column;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.Update;

/** Agreements as rows. */
final class AgreementRows {

    private static final String SELECT = "SELECT id, number, site_id, data FROM agreement ";

    private AgreementRows() {
    }

    static Optional<AgreementEntry> find(Handle handle, String idOrNumber) {
        return handle.createQuery(SELECT + "WHERE id = :name OR number = :name ORDER BY id").bind("name", idOrNumber)
                .map(AgreementRows::read).findFirst();
    }

    static List<AgreementEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY id").map(AgreementRows::read).list();
    }

    static List<AgreementEntry> atSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY id").bind("site", site)
                .map(AgreementRows::read).list();
    }

    static void insert(Handle handle, AgreementEntry agreement, Instant now) {
        bound(handle.createUpdate("INSERT INTO agreement (id, number, site_id, data, noted_at)"
                + " VALUES (:id, :number, :site, :data, :now)"), agreement, now).execute();
    }

    static void update(Handle handle, AgreementEntry agreement, Instant now) {
        bound(handle.createUpdate("UPDATE agreement SET number = :number, site_id = :site, data = :data,"
                + " noted_at = :now WHERE id = :id"), agreement, now).execute();
    }

    private static Update bound(Update statement, AgreementEntry agreement, Instant now) {
        return statement.bind("id", agreement.id()).bind("number", agreement.number()).bind("site", agreement.site())
                .bind("data", agreement.data()).bind("now", now.toString());
    }

    static AgreementEntry read(RowView row) {
        return new AgreementEntry(Column.text(row, "id"), Column.text(row, "number"), Column.text(row, "site_id"),
                Column.text(row, "data"));
    }
}
