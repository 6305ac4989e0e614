package icequill.ledger.trail;

import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.qualifier.QualifiedType;
import org.jdbi.v3.core.result.RowView;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** A row as the trail says that it was once, to be read like one of the book. */
public final class PastRow extends RowView {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Map<?, ?> values;

    private PastRow(Map<?, ?> values) {
        this.values = values;
    }

    static PastRow of(String data) {
        return new PastRow(JSON.readValue(data, new TypeReference<Map<String, Object>>() {
        }));
    }

    /** Rows of another table that belonged to it. */
    public List<PastRow> parts(String name) {
        return values.get(name) instanceof List<?> rows
                ? rows.stream().flatMap(row -> row instanceof Map<?, ?> part
                        ? List.of(new PastRow(part)).stream()
                        : List.<PastRow>of().stream()).toList()
                : List.of();
    }

    @Override
    public <T> @Nullable T getColumn(String column, Class<T> type) {
        Object value = values.get(Snapshot.name(column));
        return value == null ? null : type.cast(String.valueOf(value));
    }

    @Override
    public <T> T getColumn(String column, QualifiedType<T> type) {
        throw new UnsupportedOperationException("a row of the past has texts only");
    }

    @Override
    public Object getRow(Type type) {
        throw new UnsupportedOperationException("a row of the past is read by the names of its columns");
    }

    @Override
    public <T> T getColumn(int column, QualifiedType<T> type) {
        throw new UnsupportedOperationException("a row of the past is read by the names of its columns");
    }
}
