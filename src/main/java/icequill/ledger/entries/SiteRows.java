package icequill.ledger.entries;

import icequill.ledger.store.AddressColumns;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Sites as rows. */
public final class SiteRows {

    private static final String SELECT = "SELECT id, customer_id, name, store_number, " + AddressColumns.NAMES
            + ", tax_place, data FROM site ";

    private SiteRows() {
    }

    static Optional<SiteEntry> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).mapTo(SiteEntry.class)
                .findOne();
    }

    static List<SiteEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "WHERE id NOT IN (SELECT site_id FROM site_merged) ORDER BY id")
                .mapTo(SiteEntry.class).list();
    }

    /** Those that were merged into others too. */
    static List<SiteEntry> ofCustomer(Handle handle, String customer) {
        return handle.createQuery(SELECT + "WHERE customer_id = :customer ORDER BY id").bind("customer", customer)
                .mapTo(SiteEntry.class).list();
    }

    public static void insert(Handle handle, SiteEntry site) {
        handle.createUpdate("INSERT INTO site (id, customer_id, name, store_number, " + AddressColumns.NAMES
                + ", tax_place, data) VALUES (:id, :customer, :name, :storeNumber, " + AddressColumns.VALUES
                + ", :taxPlace, :data)")
                .bindMethods(site).execute();
    }

    static void update(Handle handle, SiteEntry site) {
        handle.createUpdate("UPDATE site SET customer_id = :customer, name = :name, store_number = :storeNumber, "
                + AddressColumns.SET + ", tax_place = :taxPlace, data = :data WHERE id = :id")
                .bindMethods(site).execute();
    }
}
