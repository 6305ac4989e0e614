package icequill.files.pricing;

import icequill.files.yaml.FolderFiles;
import icequill.files.yaml.Tree;
import icequill.files.yaml.YamlReader;
import icequill.problem.Problems;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is different about one file of two versions.
 *
 * @param values in the order of the file; none of a file that is no YAML, or differs in comments and layout only
 */
public record RatesChange(String file, Kind kind, List<Value> values) {

    public enum Kind {
        ADDED, REMOVED, CHANGED
    }

    /**
     * A value that is another now.
     *
     * @param path of keys; entries of a list by their ids where they have such
     * @param before empty where there was none
     * @param after empty where there is none any more
     */
    public record Value(String path, Optional<String> before, Optional<String> after) {}

    public RatesChange {
        values = List.copyOf(values);
    }

    /** The files that differ, by name. */
    public static List<RatesChange> between(RatesVersion before, RatesVersion after) {
        Set<String> names = new TreeSet<>(before.files().keySet());
        names.addAll(after.files().keySet());
        List<RatesChange> changes = new ArrayList<>();
        for (String name : names) {
            Kind kind = !before.files().containsKey(name)
                    ? Kind.ADDED
                    : after.files().containsKey(name) ? Kind.CHANGED : Kind.REMOVED;
            if (kind != Kind.CHANGED || !Arrays.equals(before.files().get(name), after.files().get(name))) {
                changes.add(new RatesChange(name, kind, kind == Kind.CHANGED
                        ? values(leaves(before, name), leaves(after, name))
                        : List.of()));
            }
        }
        return changes;
    }

    private static List<Value> values(Map<String, String> before, Map<String, String> after) {
        List<Value> values = new ArrayList<>();
        before.forEach((path, text) -> {
            if (!text.equals(after.get(path))) {
                values.add(new Value(path, Optional.of(text), Optional.ofNullable(after.get(path))));
            }
        });
        after.forEach((path, text) -> {
            if (!before.containsKey(path)) {
                values.add(new Value(path, Optional.empty(), Optional.of(text)));
            }
        });
        return values;
    }

    private static Map<String, String> leaves(RatesVersion version, String name) {
        Map<String, String> leaves = new LinkedHashMap<>();
        version.text(name).filter(text -> name.endsWith(FolderFiles.YAML))
                .flatMap(text -> YamlReader.parse(text, name, new Problems()))
                .ifPresent(tree -> collect("", tree, leaves));
        return leaves;
    }

    private static void collect(String path, Tree tree, Map<String, String> leaves) {
        switch (tree) {
        case Tree.Branch branch -> branch.entries().forEach(
                (key, value) -> collect(path.isEmpty() ? key : path + "." + key, value, leaves));
        case Tree.Row row -> {
            for (int i = 0; i < row.items().size(); i++) {
                String entry = id(row.items().get(i)).orElse(String.valueOf(i + 1));
                String own = path + "[" + entry + "]";
                collect(leaves.keySet().stream().anyMatch(known -> known.startsWith(own + "."))
                        ? path + "[" + (i + 1) + "]"
                        : own, row.items().get(i), leaves);
            }
        }
        case Tree.Leaf leaf -> leaves.put(path, leaf.text());
        }
    }

    private static Optional<String> id(Tree tree) {
        return tree instanceof Tree.Branch branch && branch.entries().get("id") instanceof Tree.Leaf leaf
                ? Optional.of(leaf.text())
                : Optional.empty();
    }
}
