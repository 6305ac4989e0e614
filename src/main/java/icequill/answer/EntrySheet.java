package icequill.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A customer, site or machine of the book.
 *
 * @param values by key, as files have them
 */
public record EntrySheet(String kind, String id, Map<String, Object> values) {

    public EntrySheet {
        values = new LinkedHashMap<>(values);
    }

    public Map<String, Object> json() {
        return Map.of(kind, values);
    }

    /** Names and values, for a table of text. */
    public List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        values.forEach((name, value) -> flat(name, value, rows));
        return rows;
    }

    private static void flat(String name, Object value, List<List<String>> rows) {
        switch (value) {
        case Map<?, ?> inner -> inner.forEach((key, part) -> flat(name + "." + key, part, rows));
        case List<?> list when list.stream().noneMatch(part -> part instanceof Map) ->
            rows.add(List.of(name, String.join("; ", list.stream().map(String::valueOf).toList())));
        case List<?> list -> {
            for (int i = 0; i < list.size(); i++) {
                flat(name + "[" + (i + 1) + "]", list.get(i), rows);
            }
        }
        default -> rows.add(List.of(name, String.valueOf(value)));
        }
    }
}
