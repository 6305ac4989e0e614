package icequill.ledger.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Brings the tables of a book to the form that this program works with. */
public final class Schema {

    /** The version of the last migration in the resources. */
    public static final int NEWEST = 27;

    /** The first that holds versions of the rates. */
    public static final int WITH_RATES = 11;

    /** The first that has room for files of papers. */
    public static final int WITH_PDFS = 16;

    /** The first whose papers may bill several visits. */
    public static final int WITH_PAPER_VISITS = 18;

    /** The first whose series have letters of their own. */
    public static final int WITH_LETTERS = 20;

    /** Where Flyway writes which migrations were run. */
    public static final String HISTORY = "flyway_schema_history";
    private static final String RESOURCES = "classpath:icequill/ledger/";

    private Schema() {
    }

    /** The version of a book's tables; 0 for an empty database. */
    public static int version(Jdbi database) {
        return database.withHandle(Schema::version);
    }

    /** Runs the migrations that are missing, up to a version. */
    public static void migrate(Connections connections, int target) {
        // Looking first is a hundred times as fast as asking Flyway, and nearly every opening finds all done.
        if (version(connections.writer()) < target) {
            FluentConfiguration configuration = Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(connections.writing())
                    .locations(RESOURCES + "both", RESOURCES + connections.dialect().folder())
                    .placeholders(connections.dialect().placeholders())
                    .target(MigrationVersion.fromVersion(String.valueOf(target)));
            configuration.load().migrate();
        }
    }

    /** The same of a book that is open. */
    public static int version(Handle handle) {
        Connection connection = handle.getConnection();
        // A server may hold other books, each in a schema of its own.
        try (ResultSet table = connection.getMetaData().getTables(null, connection.getSchema(), HISTORY, null)) {
            return table.next()
                    ? handle.createQuery("SELECT max(CAST(version AS INTEGER)) FROM " + HISTORY + " WHERE success")
                            .mapTo(Integer.class).findOne().orElse(0)
                    : 0;
        } catch (SQLException failed) {
            throw new ConnectionException(failed);
        }
    }

    /** Whether nothing was entered and nothing issued yet. */
    public static boolean isEmpty(Handle handle) {
        Stream<String> entered = version(handle) < WITH_RATES
                ? Stream.of("series", "customer")
                : Stream.of("series", "customer", "rates_version");
        return entered.noneMatch(table -> handle
                .createQuery("SELECT 1 FROM " + table + " LIMIT 1").mapTo(Integer.class).findOne().isPresent());
    }
}
