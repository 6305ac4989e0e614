package icequill.ledger.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import icequill.files.disk.OwnersOnly;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.ConnectionFactory;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapperFactory;
import org.jdbi.v3.core.statement.ColonPrefixSqlParser;
import org.jdbi.v3.core.statement.SqlParser;
import org.jdbi.v3.core.statement.SqlStatements;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The ways into the database: one for transactions that change something, one for those that do not. */
public final class Connections implements AutoCloseable {

    /** Finds the parameters in the words of a query, which takes longer than most queries; it keeps what it found. */
    private static final SqlParser PARAMETERS = new ColonPrefixSqlParser();
    private static final int READERS = 4;
    /** Offices wait on the server, not here, so that the longest wait is the same for all. */
    private static final int SERVER_CONNECTIONS = 8;
    private static final long BUSY_MILLISECONDS = TimeUnit.SECONDS.toMillis(10);

    private final Dialect dialect;
    private final DataSource writing;
    private final Jdbi writer;
    private final Jdbi reader;
    private final Jdbi afresh;
    private final Runnable closing;

    /** To a file. */
    private Connections(SQLiteDataSource file, FileConnections writers, FileConnections readers) {
        this.dialect = Dialect.SQLITE;
        this.writing = file;
        this.writer = over(writers);
        this.reader = over(readers);
        this.afresh = over(file::getConnection);
        this.closing = () -> {
            readers.close();
            writers.close();
        };
    }

    /** To a server. */
    private Connections(String url, HikariDataSource server) {
        this.dialect = Dialect.POSTGRESQL;
        this.writing = server;
        this.writer = over(server::getConnection);
        this.reader = writer;
        // Past the pool, which goes on trying for half a minute where the server is gone.
        this.afresh = over(() -> DriverManager.getConnection(url));
        this.closing = server::close;
    }

    private static Jdbi over(ConnectionFactory connecting) {
        return Jdbi.create(connecting).configure(SqlStatements.class, words -> words.setSqlParser(PARAMETERS))
                .registerRowMapper((RowMapperFactory) RecordRow::of).registerArgument(new CellArguments());
    }

    /**
     * Connects once at first, since a pool tries for half a minute before it says what is wrong.
     *
     * @throws ConnectionException when that fails
     * @throws UncheckedIOException when a file of the database cannot be made
     */
    public static Connections to(BookPlace place) {
        return switch (place) {
        case BookPlace.InFile(Path database, Path papers) -> toFile(database);
        case BookPlace.OnServer(String url, Path papers) -> toServer(url);
        };
    }

    public Dialect dialect() {
        return dialect;
    }

    /** What gives out the connections that write. */
    public DataSource writing() {
        return writing;
    }

    public Jdbi writer() {
        return writer;
    }

    /** By a connection of its own for each time. */
    public Jdbi afresh() {
        return afresh;
    }

    public Jdbi reader() {
        return reader;
    }

    @Override
    public void close() {
        closing.run();
    }

    /** To a file that may not be written to, as it is; whatever would change it fails. */
    public static Connections looking(Path database) {
        loaded(database);
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        // What was not carried over from the file beside it yet is seen only if others might be writing.
        SQLiteDataSource source = source(database, isWhole(database) ? "?immutable=1" : "?mode=ro", config);
        FileConnections both = new FileConnections(source, READERS, "");
        tried(both);
        return new Connections(source, both, both);
    }

    private static Connections toFile(Path database) {
        loaded(database);
        made(database);
        SQLiteConfig writes = sqlite();
        writes.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteConfig reads = sqlite();
        SQLiteDataSource read = source(database, "", reads);
        SQLiteDataSource written = source(database, "", writes);
        FileConnections readers = new FileConnections(read, READERS, "PRAGMA query_only = 1");
        tried(readers);
        return new Connections(written, new FileConnections(written, 1, ""), readers);
    }

    /** Whether no entries stand in the log beside the file still. */
    public static boolean isWhole(Path database) {
        return database.resolveSibling(database.getFileName() + "-wal").toFile().length() == 0;
    }

    private static void loaded(Path database) {
        try {
            SqliteLibrary.load(Caches.of(database));
        } catch (IOException nowhere) {
            throw new UncheckedIOException(nowhere);
        }
    }

    /** Before the database would make it, readable for all. */
    private static void made(Path database) {
        try {
            OwnersOnly.create(database);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static void tried(ConnectionFactory way) {
        try {
            way.closeConnection(way.openConnection());
        } catch (SQLException failed) {
            throw new ConnectionException(failed);
        }
    }

    private static SQLiteConfig sqlite() {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setTempStore(SQLiteConfig.TempStore.MEMORY);
        config.setBusyTimeout((int) BUSY_MILLISECONDS);
        return config;
    }

    /** As an address, in which signs that mean something in one stand for themselves. */
    private static SQLiteDataSource source(Path database, String how, SQLiteConfig config) {
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + database.toAbsolutePath().toUri() + how);
        return source;
    }

    private static Connections toServer(String url) {
        tried(() -> DriverManager.getConnection(url));
        HikariConfig config = new HikariConfig();
        config.setMaximumPoolSize(SERVER_CONNECTIONS);
        // Made when first asked for.
        config.setMinimumIdle(0);
        config.setInitializationFailTimeout(-1);
        config.setConnectionTimeout(TimeUnit.SECONDS.toMillis(30));
        config.setJdbcUrl(url);
        // Compiling a query takes longer than any of ours runs.
        config.setConnectionInitSql("SET jit = off");
        Properties properties = new Properties();
        properties.setProperty("ApplicationName", Holder.self().text());
        config.setDataSourceProperties(properties);
        return new Connections(url, new HikariDataSource(config));
    }
}
