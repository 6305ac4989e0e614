package icequill.ledger.entries;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What is known of accounts besides papers, as rows. */
final class AccountRows {

    private static final String SELECT = "SELECT customer_id, data FROM account ";

    private AccountRows() {
    }

    static Optional<AccountEntry> find(Handle handle, String customer) {
        return handle.createQuery(SELECT + "WHERE customer_id = :customer").bind("customer", customer)
                .mapTo(AccountEntry.class).findOne();
    }

    static List<AccountEntry> all(Handle handle) {
        return handle.createQuery(SELECT + "ORDER BY customer_id").mapTo(AccountEntry.class).list();
    }

    static void store(Handle handle, AccountEntry account, Instant now) {
        handle.createUpdate("INSERT INTO account (customer_id, data, noted_at) VALUES (:customer, :data, :now)"
                + " ON CONFLICT (customer_id) DO UPDATE SET data = :data, noted_at = :now")
                .bindMethods(account).bind("now", now).execute();
    }
}
