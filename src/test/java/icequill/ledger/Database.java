package icequill.ledger;

import icequill.ledger.store.BookPlace;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

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

    /**
     * The address of a database of its own, which holds what one of that name was filled with the first time: a server copies its files
     * in less time than it takes to make the tables.
     *
     * @param filling takes the address of the new one
     */
    public static String copyOf(String name, Consumer<String> filling) {
        return Server.copyOf(name, filling);
    }

    /** One real server for all tests, started when first used. Each book has a schema, since databases take long to make and remove. */
    private static final class Server {

        private static final AtomicInteger SCHEMAS = new AtomicInteger();
        private static final AtomicInteger COPIES = new AtomicInteger();
        private static final Map<String, Boolean> FILLED = new ConcurrentHashMap<>();
        private static final EmbeddedPostgres SERVER = start();

        private Server() {
        }

        static String newSchema() {
            String name = "shop" + SCHEMAS.incrementAndGet();
            run("CREATE SCHEMA " + name);
            return SERVER.getJdbcUrl("postgres", "postgres") + "&currentSchema=" + name;
        }

        static String copyOf(String name, Consumer<String> filling) {
            FILLED.computeIfAbsent(name, once -> {
                run("CREATE DATABASE " + once);
                filling.accept(SERVER.getJdbcUrl("postgres", once));
                return true;
            });
            String copy = name + COPIES.incrementAndGet();
            run("CREATE DATABASE " + copy + " TEMPLATE " + name);
            return SERVER.getJdbcUrl("postgres", copy);
        }

        private static void run(String command) {
            try (Connection connection = SERVER.getPostgresDatabase().getConnection();
                    Statement statement = connection.createStatement()) {
                statement.execute(command);
            } catch (SQLException failed) {
                throw new IllegalStateException(failed);
            }
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
