package icequill.ledger.entries;

import icequill.ledger.store.Column;
import java.util.List;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.Update;

/** Machines as rows. */
final class MachineRows {

    private static final String SELECT = "SELECT site_id, id, model, serial, installed_on, position, data FROM machine ";

    private MachineRows() {
    }

    static List<MachineEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY site_id, position, id").map(MachineRows::read).list();
    }

    static List<MachineEntry> ofSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY position, id").bind("site", site)
                .map(MachineRows::read).list();
    }

    static void insert(Handle handle, MachineEntry machine) {
        bound(handle.createUpdate("INSERT INTO machine (site_id, id, model, serial, installed_on, position, data)"
                + " VALUES (:site, :id, :model, :serial, :installed, :position, :data)"), machine).execute();
    }

    static void update(Handle handle, MachineEntry machine) {
        bound(handle.createUpdate("UPDATE machine SET model = :model, serial = :serial, installed_on = :installed,"
                + " position = :position, data = :data WHERE site_id = :site AND id = :id"), machine).execute();
    }

    private static Update bound(Update statement, MachineEntry machine) {
        return statement.bind("site", machine.site()).bind("id", machine.id()).bind("model", machine.model())
                .bind("serial", machine.serial()).bind("installed", machine.installed().map(Object::toString))
                .bind("position", machine.position()).bind("data", machine.data());
    }

    static MachineEntry read(RowView row) {
        return new MachineEntry(Column.text(row, "site_id"), Column.text(row, "id"), Column.text(row, "model"),
                Column.mayBe(row, "serial"), Column.day(row, "installed_on"),
                Column.whole(row, "position"), Column.text(row, "data"));
    }
}
