package icequill.ledger.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.jdbi.v3.core.ConnectionFactory;

/**
 * Connections to a book that is a file: made when first asked for, kept for whoever asks next, and closed with the book. They cannot go
 * stale as those to a server do, so no thread looks after them; one that did took longer to stop than most commands take to run.
 */
final class FileConnections implements ConnectionFactory, AutoCloseable {

    private static final long LONGEST_WAIT_SECONDS = 30;

    private final DataSource file;
    private final String first;
    private final Semaphore free;
    private final Deque<Connection> idle = new ConcurrentLinkedDeque<>();
    private volatile boolean isClosed;

    /**
     * @param most how many are lent at a time
     * @param first what each does before it is lent; may be empty
     */
    FileConnections(DataSource file, int most, String first) {
        this.file = file;
        this.first = first;
        // Fair, so that no thread waits for ever.
        this.free = new Semaphore(most, true);
    }

    @Override
    public Connection openConnection() throws SQLException {
        await();
        try {
            Connection kept = idle.pollFirst();
            return kept == null ? made() : kept;
        } catch (SQLException | RuntimeException failed) {
            free.release();
            throw failed;
        }
    }

    private void await() throws SQLException {
        try {
            if (!free.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
                throw new SQLException("all connections are lent since " + LONGEST_WAIT_SECONDS + " seconds");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new SQLException("stopped while all connections were lent", stopped);
        }
    }

    private Connection made() throws SQLException {
        if (isClosed) {
            throw new SQLException("the book is closed");
        }
        Connection made = file.getConnection();
        try (Statement statement = made.createStatement()) {
            if (!first.isEmpty()) {
                statement.execute(first);
            }
            return made;
        } catch (SQLException failed) {
            made.close();
            throw failed;
        }
    }

    @Override
    public void closeConnection(Connection lent) throws SQLException {
        try {
            if (isClosed || lent.isClosed() || !isAsNew(lent)) {
                lent.close();
            } else {
                idle.addFirst(lent);
            }
        } finally {
            free.release();
        }
    }

    /** Without a transaction; one that cannot be ended goes with its connection. */
    private static boolean isAsNew(Connection lent) {
        try {
            if (!lent.getAutoCommit()) {
                lent.rollback();
                lent.setAutoCommit(true);
            }
            return true;
        } catch (SQLException stuck) {
            return false;
        }
    }

    @Override
    public void close() {
        isClosed = true;
        for (Connection kept = idle.pollFirst(); kept != null; kept = idle.pollFirst()) {
            try {
                kept.close();
            } catch (SQLException failed) {
                // All that was to be written is; the system frees what is left.
            }
        }
    }
}
