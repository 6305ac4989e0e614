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
            whole = with(whole, value.getKey().path(), value.getKey().kind(), value.getValue());
        }
        return whole;
    }

    private static Tree.Branch with(Tree.Branch in, List<String> path, Column.Kind kind, GivenValue value) {
        Map<String, Tree> entries = new LinkedHashMap<>(in.entries());
        Map<String, Place> keys = new LinkedHashMap<>(in.keys());
        String key = path.getFirst();
        keys.put(key, value.place());
        if (path.size() > 1) {
            Tree.Branch inner = entries.get(key) instanceof Tree.Branch branch ? branch : empty(value.place());
            entries.put(key, with(inner, path.subList(1, path.size()), kind, value));
        } else if (value.text().isBlank()) {
            entries.remove(key);
        } else {
            entries.put(key, tree(kind, value));
        }
        return new Tree.Branch(entries, keys, in.place());
    }

    public static Tree.Branch empty(Place place) {
        return new Tree.Branch(Map.of(), Map.of(), place);
    }

    private static Tree tree(Column.Kind kind, GivenValue value) {
        String text = value.text().strip();
        return switch (kind) {
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
        case LIST -> new Tree.Row(parts(text, value.place()), value.place());
        };
    }

    private static List<Tree> parts(String text, Place place) {
        List<Tree> parts = new ArrayList<>();
        int from = 0;
        for (int end = text.indexOf(';'); end >= 0; end = text.indexOf(';', from)) {
            parts.add(leaf(text.substring(from, end).strip(), Tree.Leaf.Kind.TEXT, place));
            from = end + 1;
        }
        parts.add(leaf(text.substring(from).strip(), Tree.Leaf.Kind.TEXT, place));
        return parts;
    }

    private static Tree.Leaf leaf(String text, Tree.Leaf.Kind kind, Place place) {
        return Tree.Leaf.of(text, kind, place);
    }
}
