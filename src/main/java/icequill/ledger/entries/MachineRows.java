package icequill.ledger.entries;

import java.util.List;
import org.jdbi.v3.core.Handle;

/** Machines as rows. */
final class MachineRows {

    private static final String SELECT = "SELECT site_id, id, model, serial, installed_on, position, data FROM machine ";

    private MachineRows() {
    }

    static List<MachineEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY site_id, position, id").mapTo(MachineEntry.class).list();
    }

    static List<MachineEntry> ofSite(Handle handle, String site) {
        return handle.createQuery(SELECT + "WHERE site_id = :site ORDER BY position, id").bind("site", site)
                .mapTo(MachineEntry.class).list();
    }

    static void insert(Handle handle, MachineEntry machine) {
        handle.createUpdate("INSERT INTO machine (site_id, id, model, serial, installed_on, position, data)"
                + " VALUES (:site, :id, :model, :serial, :installed, :position, :data)")
                .bindMethods(machine).execute();
    }

    static void update(Handle handle, MachineEntry machine) {
        handle.createUpdate("UPDATE machine SET model = :model, serial = :serial, installed_on = :installed,"
                + " position = :position, data = :data WHERE site_id = :site AND id = :id")
                .bindMethods(machine).execute();
    }
}
