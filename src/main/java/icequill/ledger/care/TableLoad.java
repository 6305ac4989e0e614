package icequill.ledger.care;

import icequill.files.disk.Hash;
import icequill.ledger.store.SqlErrors;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.PreparedBatch;
import tools.jackson.core.type.TypeReference;

/** Loads a table out of a backup. */
final class TableLoad {

    private static final int BATCH = 500;

    private TableLoad() {
    }

    /** Loads the rows, and returns the hash of what was read. */
    static String load(Handle handle, Archive.Table table, InputStream in) {
        MessageDigest digest = Hash.digest();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new DigestInputStream(in, digest), StandardCharsets.UTF_8))) {
            List<String> columns = values(String.valueOf(lines.readLine())).stream().map(String::valueOf).toList();
            if (!Set.copyOf(columns).equals(columns(handle, table)) || columns.size() != Set.copyOf(columns).size()) {
                throw new BrokenArchive("table " + table.name() + " has other columns: " + String.join(", ", columns));
            }
            rows(handle, table, columns, lines);
        } catch (JdbiException refused) {
            // Whatever a database says of a disk or a connection stays what it is.
            throw SqlErrors.isOfData(refused)
                    ? new BrokenArchive(
                            "table " + table.name() + " holds what the book refuses: " + refused.getMessage())
                    : refused;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return Hash.text(digest.digest());
    }

    private static void rows(Handle handle, Archive.Table table, List<String> columns, BufferedReader lines)
            throws IOException {
        String values = IntStream.range(0, columns.size()).mapToObj(i -> "?").collect(Collectors.joining(", "));
        PreparedBatch batch = handle.prepareBatch("INSERT INTO " + table.name() + " (" + String.join(", ", columns)
                + ") VALUES (" + values + ")");
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            List<Object> row = values(line);
            if (row.size() != columns.size() || row.stream().anyMatch(value -> value instanceof Collection<?>
                    || value instanceof Map<?, ?>)) {
                throw new BrokenArchive("table " + table.name() + " has a row of another form");
            }
            for (int i = 0; i < row.size(); i++) {
                batch.bind(i, row.get(i));
            }
            batch.add();
            if (batch.size() == BATCH) {
                batch.execute();
            }
        }
        if (batch.size() > 0) {
            batch.execute();
        }
    }

    private static List<Object> values(String line) {
        return Archive.JSON.readValue(line, new TypeReference<>() {
        });
    }

    /** Names go into the statement, so none but the table's own may be there. */
    private static Set<String> columns(Handle handle, Archive.Table table) {
        return handle.createQuery("SELECT * FROM " + table.name() + " LIMIT 0").scanResultSet((rows, context) -> {
            try (context; ResultSet none = rows.get()) {
                ResultSetMetaData columns = none.getMetaData();
                Set<String> names = new HashSet<>();
                for (int i = 1; i <= columns.getColumnCount(); i++) {
                    names.add(columns.getColumnName(i));
                }
                return names;
            }
        });
    }
}
