package icequill.ledger.trail;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import tools.jackson.databind.json.JsonMapper;

/**
 * All that the book's rows say of an entry at a moment.
 *
 * @param owner the customer whom it tells of, by id; empty where it stays when he is forgotten
 * @param data keys in the order of the alphabet, as JSON; a column that is empty has none, so that new columns change nothing
 */
public record Snapshot(Optional<String> owner, String data) {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final String OWNER = "owner";
    private static final Pattern ID = Pattern.compile("_id$");
    private static final Pattern BREAK = Pattern.compile("_(.)");

    /** Empty where the book has no such entry. */
    public static Optional<Snapshot> of(Handle handle, Subject subject, String entry) {
        List<String> key = subject.key(entry);
        return bound(handle.createQuery(subject.row()), key).mapToMap().findOne().map(row -> {
            Object owner = row.get(OWNER);
            Map<String, Object> whole = named(row, OWNER);
            for (Subject.Part part : subject.parts()) {
                List<Map<String, Object>> rows = bound(handle.createQuery(part.query()), key).mapToMap()
                        .map(each -> named(each, part.key())).list();
                if (!rows.isEmpty()) {
                    whole.put(part.name(), part.isList() ? new ArrayList<>(rows) : rows.getFirst());
                }
            }
            return new Snapshot(Optional.ofNullable(owner).map(String::valueOf), JSON.writeValueAsString(whole));
        });
    }

    private static Query bound(Query query, List<String> key) {
        for (int i = 0; i < key.size(); i++) {
            query.bind(i, key.get(i));
        }
        return query;
    }

    /** Without what is empty, and without one column. */
    private static Map<String, Object> named(Map<String, Object> row, String without) {
        Map<String, Object> named = new TreeMap<>();
        row.forEach((column, value) -> {
            if (value != null && !column.equals(without)) {
                named.put(name(column), value);
            }
        });
        return named;
    }

    /** {@code customer} for a column {@code customer_id}, {@code paymentDays} for {@code payment_days}. */
    static String name(String column) {
        return BREAK.matcher(ID.matcher(column).replaceFirst(""))
                .replaceAll(letter -> letter.group(1).toUpperCase(Locale.ROOT));
    }
}
