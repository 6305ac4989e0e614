package icequill.ledger;

import icequill.ledger.store.BookPlace;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.atomic.AtomicInteger;

/** The databases that a book may be in; all that a book does is tested on each. */
public enum Database {
    SQLITE {
        @Override
        public BookPlace place(Path shop) {
            return BookPlace.inShop(shop);
        }
    },
    POSTGRESQL {
        @Override
        public BookPlace place(Path shop) {
            return new BookPlace.OnServer(Server.newSchema(), BookPlace.papersIn(shop));
        }
    };

    /** A place for a new book. */
    public abstract BookPlace place(Path shop);

    /** One real server for all tests, started when first used. Each book has a schema, since databases take long to make and remove. */
    private static final class Server {

        private static final AtomicInteger SCHEMAS = new AtomicInteger();
        private static final EmbeddedPostgres SERVER = start();

        private Server() {
        }

        static String newSchema() {
            String name = "shop" + SCHEMAS.incrementAndGet();
            try (Connection connection = SERVER.getPostgresDatabase().getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute("CREATE SCHEMA " + name);
            } catch (SQLException failed) {
                throw new IllegalStateException(failed);
            }
            return SERVER.getJdbcUrl("postgres", "postgres") + "&currentSchema=" + name;
        }

        private static EmbeddedPostgres start() {
            try {
                // Tests stop processes, never the power.
                return EmbeddedPostgres.builder().setServerConfig("fsync", "off").start();
            } catch (IOException failed) {
                throw new UncheckedIOException(failed);
            }
        }
    }
}
