package icequill.ledger.trail;

import icequill.ledger.store.Cells;
import icequill.ledger.store.RecordRow;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** A row as the trail says that it was once, to be read like one of the book. */
public final class PastRow implements Cells {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Map<?, ?> values;

    private PastRow(Map<?, ?> values) {
        this.values = values;
    }

    static PastRow of(String data) {
        return new PastRow(JSON.readValue(data, new TypeReference<Map<String, Object>>() {
        }));
    }

    /** The record that it is. */
    public <T> T as(Class<T> type) {
        return RecordRow.of(type).read(this);
    }

    /** Rows of another table that belonged to it. */
    public <T> List<T> parts(String name, Class<T> type) {
        return values.get(name) instanceof List<?> rows
                ? rows.stream().flatMap(row -> row instanceof Map<?, ?> part ? Stream.of(part) : Stream.empty())
                        .map(part -> new PastRow(part).as(type)).toList()
                : List.of();
    }

    @Override
    public @Nullable String text(String column) {
        Object value = values.get(Snapshot.name(column));
        return value == null ? null : String.valueOf(value);
    }
}
