package icequill.ledger.entries;

import icequill.ledger.store.AddressColumns;
import icequill.ledger.store.Column;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.result.RowView;
import org.jdbi.v3.core.statement.Update;

/** Sites as rows. */
public final class SiteRows {

    private static final String SELECT = "SELECT id, customer_id, name, store_number, " + AddressColumns.NAMES
            + ", tax_place, data FROM site ";

    private SiteRows() {
    }

    static Optional<SiteEntry> find(Handle handle, String id) {
        return handle.createQuery(SELECT + "WHERE id = :id").bind("id", id).map(SiteRows::read)
                .findOne();
    }

    static List<SiteEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "WHERE id NOT IN (SELECT site_id FROM site_merged) ORDER BY id")
                .map(SiteRows::read).list();
    }

    /** Those that were merged into others too. */
    static List<SiteEntry> ofCustomer(Handle handle, String customer) {
        return handle.createQuery(SELECT + "WHERE customer_id = :customer ORDER BY id").bind("customer", customer)
                .map(SiteRows::read).list();
    }

    public static void insert(Handle handle, SiteEntry site) {
        bound(handle.createUpdate("INSERT INTO site (id, customer_id, name, store_number, " + AddressColumns.NAMES
                + ", tax_place, data) VALUES (:id, :customer, :name, :storeNumber, " + AddressColumns.VALUES
                + ", :taxPlace, :data)"), site).execute();
    }

    static void update(Handle handle, SiteEntry site) {
        bound(handle.createUpdate("UPDATE site SET customer_id = :customer, name = :name, store_number = :storeNumber, "
                + AddressColumns.SET + ", tax_place = :taxPlace, data = :data WHERE id = :id"), site).execute();
    }

    private static Update bound(Update statement, SiteEntry site) {
        return AddressColumns.bind(statement, site.address()).bind("id", site.id()).bind("customer", site.customer())
                .bind("name", site.name()).bind("storeNumber", site.storeNumber()).bind("taxPlace", site.taxPlace())
                .bind("data", site.data());
    }

    static SiteEntry read(RowView row) {
        return new SiteEntry(Column.text(row, "id"), Column.text(row, "customer_id"), Column.text(row, "name"),
                Column.mayBe(row, "store_number"), AddressColumns.read(row), Column.mayBe(row, "tax_place"),
                Column.text(row, "data"));
    }
}
