package icequill.files.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A text in YAML of which single values can be changed; comments, order and layout stay as they are. */
public final class YamlText {

    private final String text;
    private final List<Value> values;

    private YamlText(String text, List<Value> values) {
        this.text = text;
        this.values = List.copyOf(values);
    }

    /**
     * A single value.
     *
     * @param path as problems show it, such as {@code grades[0].wage}
     * @param from where it begins, in characters from 0
     * @param until where it ends, exclusive
     * @param key where its key begins, or it where it has none
     */
    public record Value(String path, String text, int from, int until, int key) {}

    /**
     * The values of a text.
     *
     * @param text that {@link YamlReader} read without a problem
     */
    public static YamlText of(String text) {
        List<Value> values = new ArrayList<>();
        List<Integer> pairs = pairs(text);
        new Compose(LoadSettings.builder().build()).composeString(text)
                .ifPresent(root -> collect(pairs, root, "", index(pairs, root.getStartMark()), values));
        return new YamlText(text, values);
    }

    private static void collect(List<Integer> pairs, Node node, String path, int key, List<Value> values) {
        switch (node) {
        case MappingNode map -> {
            for (NodeTuple tuple : map.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode name) {
                    collect(pairs, tuple.getValueNode(),
                            path.isEmpty() ? name.getValue() : path + "." + name.getValue(),
                            index(pairs, name.getStartMark()), values);
                }
            }
        }
        case SequenceNode list -> {
            for (int i = 0; i < list.getValue().size(); i++) {
                Node item = list.getValue().get(i);
                collect(pairs, item, path + "[" + i + "]", index(pairs, item.getStartMark()), values);
            }
        }
        case ScalarNode scalar -> values.add(new Value(path, scalar.getValue(), index(pairs, scalar.getStartMark()),
                index(pairs, scalar.getEndMark()), key));
        default -> throw new IllegalStateException("not a kind of YAML node: " + node);
        }
    }

    /** Marks count code points, nearly all of which are one character. */
    private static int index(List<Integer> pairs, Optional<Mark> mark) {
        int points = mark.orElseThrow().getIndex();
        int before = 0;
        while (before < pairs.size() && pairs.get(before) < points + before) {
            before++;
        }
        return points + before;
    }

    /** Where the code points of two characters begin, in characters. */
    private static List<Integer> pairs(String text) {
        return IntStream.range(0, text.length()).filter(i -> Character.isHighSurrogate(text.charAt(i))).boxed()
                .toList();
    }

    public List<Value> values() {
        return values;
    }

    public Optional<Value> value(String path) {
        return values.stream().filter(value -> value.path().equals(path)).findFirst();
    }

    /** The text with other values, each as it is to be written. */
    public String with(Map<Value, String> others) {
        StringBuilder changed = new StringBuilder(text);
        others.entrySet().stream()
                .sorted(Comparator.comparingInt((Map.Entry<Value, String> other) -> other.getKey().from()).reversed())
                .forEach(other -> changed.replace(other.getKey().from(), other.getKey().until(), other.getValue()));
        return changed.toString();
    }

    /** The text with a further key behind a value: on its line within braces, else on a line below. */
    public String with(Value before, String key, String value) {
        int lineStart = text.lastIndexOf('\n', before.key()) + 1;
        String ahead = text.substring(lineStart, before.key());
        if (!ahead.isBlank()) {
            return new StringBuilder(text).insert(before.until(), ", " + key + ": " + value).toString();
        }
        int lineEnd = text.indexOf('\n', before.until());
        int end = lineEnd < 0 ? text.length() : lineEnd;
        return new StringBuilder(text).insert(end, "\n" + ahead + key + ": " + value).toString();
    }
}
