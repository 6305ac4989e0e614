package icequill.office.asking;

import icequill.files.yaml.Tree;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was answered so far, by the keys of a visit's form. Immutable, so that whoever goes back has what he had. */
public record Draft(Map<String, Object> values) {

    /** Who bears all of it; a form says so of each row. */
    static final String OUTCOME = "outcome";
    static final Draft EMPTY = new Draft(Map.of());

    public Draft {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    Draft with(String key, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(key, value instanceof Draft part ? part.values() : value);
        return new Draft(more);
    }

    /** The same, or as it is where there is none. */
    Draft withAny(String key, Optional<?> value) {
        return value.map(found -> with(key, found)).orElse(this);
    }

    /** With all values of another. */
    Draft withAll(Draft other) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.putAll(other.values());
        return new Draft(more);
    }

    /** With one more row of a list. */
    Draft adding(String key, Draft row) {
        List<Object> rows = new ArrayList<>(rows(key));
        rows.add(row.values());
        return with(key, List.copyOf(rows));
    }

    /** With a value in each row of a list that says nothing of it by itself. */
    Draft inRows(String list, String key, Object value) {
        return rows(list).isEmpty()
                ? this
                : with(list, rows(list).stream().map(row -> of((Map<?, ?>) row).withDefault(key, value).values())
                        .toList());
    }

    /** With a value, unless there is one. */
    Draft withDefault(String key, Object value) {
        return values.containsKey(key) ? this : with(key, value);
    }

    Draft without(String key) {
        Map<String, Object> fewer = new LinkedHashMap<>(values);
        fewer.remove(key);
        return new Draft(fewer);
    }

    /** One row of a list. */
    Draft row(String list, int place) {
        return of((Map<?, ?>) rows(list).get(place));
    }

    /** With another row in the place of one. */
    Draft withRow(String list, int place, Draft row) {
        List<Object> rows = new ArrayList<>(rows(list));
        rows.set(place, row.values());
        return with(list, List.copyOf(rows));
    }

    /** What a form of the book says. */
    static Draft of(Tree.Branch form) {
        return of((Map<?, ?>) plain(form));
    }

    private static Object plain(Tree tree) {
        return switch (tree) {
        case Tree.Branch branch -> {
            Map<String, Object> values = new LinkedHashMap<>();
            branch.entries().forEach((key, value) -> values.put(key, plain(value)));
            yield values;
        }
        case Tree.Row row -> row.items().stream().map(Draft::plain).toList();
        case Tree.Leaf leaf -> leaf.value() == null ? "" : leaf.value();
        };
    }

    /** A text that was answered; empty where none was. */
    String text(String key) {
        return values.get(key) instanceof String text ? text : "";
    }

    /** A row of a list. */
    static Draft of(Map<?, ?> row) {
        Map<String, Object> values = new LinkedHashMap<>();
        row.forEach((key, value) -> values.put(String.valueOf(key), value));
        return new Draft(values);
    }

    List<?> rows(String key) {
        return values.get(key) instanceof List<?> rows ? rows : List.of();
    }

    /** The texts of a key in the rows of a list. */
    List<String> texts(String list, String key) {
        return rows(list).stream().flatMap(row -> row instanceof Map<?, ?> map && map.get(key) instanceof String text
                ? Optional.of(text).stream()
                : Optional.<String>empty().stream()).toList();
    }
}
