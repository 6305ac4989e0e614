package icequill.ledger;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import tools.jackson.core.type.TypeReference;

/** Loads a table out of a backup. */
final class TableLoad {

    private static final int BATCH = 500;
    private static final Pattern NAME = Pattern.compile("[a-z_]+");

    private TableLoad() {
    }

    /** Loads the rows, and returns the hash of what was read. */
    static String load(Handle handle, Archive.Table table, InputStream in) {
        MessageDigest digest = Hash.digest();
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(new DigestInputStream(in, digest), StandardCharsets.UTF_8))) {
            List<Object> columns = values(String.valueOf(lines.readLine()));
            rows(handle, table, columns.stream().map(TableLoad::name).toList(), lines);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static void rows(Handle handle, Archive.Table table, List<String> columns, BufferedReader lines)
            throws IOException {
        String values = IntStream.range(0, columns.size()).mapToObj(i -> "?").collect(Collectors.joining(", "));
        PreparedBatch batch = handle.prepareBatch("INSERT INTO " + table.name() + " (" + String.join(", ", columns)
                + ") VALUES (" + values + ")");
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            List<Object> row = values(line);
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

    /** A name goes into the statement, so nothing but a name may be there. */
    private static String name(Object column) {
        String name = String.valueOf(column);
        if (!NAME.matcher(name).matches()) {
            throw new UncheckedIOException(new IOException("a backup with a column \"" + name + "\""));
        }
        return name;
    }
}
