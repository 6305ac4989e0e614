package icequill.files;

import icequill.problem.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** What a YAML file says, each value with its place. */
sealed interface Tree {

    Place place();

    /**
     * Keys and values, in the file's order.
     *
     * @param keys where each key stands
     */
    record Branch(Map<String, Tree> entries, Map<String, Place> keys, Place place) implements Tree {
        public Branch {
            entries = new LinkedHashMap<>(entries);
            keys = Map.copyOf(keys);
        }
    }

    /** A list. */
    record Row(List<Tree> items, Place place) implements Tree {
        public Row {
            items = List.copyOf(items);
        }
    }

    /** A single value, with the text that stands in the file. */
    record Leaf(String text, Kind kind, Place place) implements Tree {

        /** What YAML takes it for. */
        enum Kind {
            TEXT, NUMBER, TRUTH, NOTHING
        }
    }

    /** All texts within, for checks that concern any text. */
    default Stream<Leaf> texts() {
        return switch (this) {
        case Branch branch -> branch.entries().values().stream().flatMap(Tree::texts);
        case Row row -> row.items().stream().flatMap(Tree::texts);
        case Leaf leaf -> leaf.kind() == Leaf.Kind.TEXT ? Stream.of(leaf) : Stream.empty();
        };
    }
}
