package icequill.files.yaml;

import icequill.problem.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Puts single values into the keys and lists of a file. */
public final class ValueTree {

    private ValueTree() {
    }

    /** The same with the values laid over it; a value of no letters takes its key out. */
    public static Tree.Branch over(Tree.Branch base, Map<Column, GivenValue> values) {
        Tree.Branch whole = base;
        for (Map.Entry<Column, GivenValue> value : values.entrySet()) {
            whole = with(whole, value.getKey().path(), value.getKey(), value.getValue());
        }
        return whole;
    }

    private static Tree.Branch with(Tree.Branch in, List<String> path, Column column, GivenValue value) {
        Map<String, Tree> entries = new LinkedHashMap<>(in.entries());
        Map<String, Place> keys = new LinkedHashMap<>(in.keys());
        String key = path.getFirst();
        keys.put(key, value.place());
        if (path.size() > 1) {
            Tree.Branch inner = entries.get(key) instanceof Tree.Branch branch ? branch : empty(value.place());
            Tree.Branch changed = with(inner, path.subList(1, path.size()), column, value);
            entries.put(key, changed);
            if (changed.entries().isEmpty()) {
                entries.remove(key);
            }
        } else if (value.text().isBlank()) {
            entries.remove(key);
        } else {
            entries.put(key, tree(column, value, ';'));
        }
        return new Tree.Branch(entries, keys, in.place());
    }

    public static Tree.Branch empty(Place place) {
        return new Tree.Branch(Map.of(), Map.of(), place);
    }

    /** @param between what stands between the texts of a list */
    private static Tree tree(Column column, GivenValue value, char between) {
        String text = value.text().strip();
        return switch (column.kind()) {
        case TEXT -> leaf(text, Tree.Leaf.Kind.TEXT, value.place());
        case NUMBER -> {
            Tree.Leaf number = leaf(text, Tree.Leaf.Kind.NUMBER, value.place());
            yield number.number().isPresent() ? number : leaf(text, Tree.Leaf.Kind.TEXT, value.place());
        }
        case YES_OR_NO -> switch (text.toLowerCase(Locale.ROOT)) {
        case "yes", "true" -> leaf("true", Tree.Leaf.Kind.TRUTH, value.place());
        case "no", "false" -> leaf("false", Tree.Leaf.Kind.TRUTH, value.place());
        default -> leaf(text, Tree.Leaf.Kind.TEXT, value.place());
        };
        case LIST -> new Tree.Row(parts(text, between).stream()
                .<Tree>map(part -> leaf(part, Tree.Leaf.Kind.TEXT, value.place())).toList(), value.place());
        case ROWS -> new Tree.Row(parts(text, ';').stream().filter(row -> !row.isEmpty())
                .<Tree>map(row -> row(column.parts(), row, value.place())).toList(), value.place());
        };
    }

    /** A row as its keys; what the columns do not have, or have had already, stays for the schema to report. */
    private static Tree.Branch row(List<Column> columns, String text, Place place) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Map<String, Place> keys = new LinkedHashMap<>();
        for (String part : parts(text, '|').stream().filter(part -> !part.isEmpty()).toList()) {
            int colon = part.indexOf(':');
            boolean isFirst = entries.isEmpty() && colon < 0;
            String key = isFirst ? columns.getFirst().name() : part.substring(0, colon < 0 ? part.length() : colon);
            Column column = columns.stream().filter(known -> known.name().equals(key.strip())).findFirst()
                    .orElseGet(() -> Column.text(key.strip()));
            String name = entries.containsKey(column.name()) ? "second " + column.name() : column.name();
            entries.put(name, tree(column, new GivenValue(part.substring(colon + 1), place), ','));
            keys.put(name, place);
        }
        return new Tree.Branch(entries, keys, place);
    }

    private static List<String> parts(String text, char between) {
        List<String> parts = new ArrayList<>();
        int from = 0;
        for (int end = text.indexOf(between); end >= 0; end = text.indexOf(between, from)) {
            parts.add(text.substring(from, end).strip());
            from = end + 1;
        }
        parts.add(text.substring(from).strip());
        return parts;
    }

    private static Tree.Leaf leaf(String text, Tree.Leaf.Kind kind, Place place) {
        return Tree.Leaf.of(text, kind, place);
    }
}
