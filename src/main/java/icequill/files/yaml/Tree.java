package icequill.files.yaml;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What a YAML file says, each value with its place. */
public sealed interface Tree {

    Place place();

    /**
     * Keys and values, in the file's order.
     *
     * @param keys where each key stands
     */
    record Branch(Map<String, Tree> entries, Map<String, Place> keys, Place place) implements Tree {
        public Branch {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
            keys = Map.copyOf(keys);
        }

        /** One that the program itself writes. */
        public static Branch of(Map<String, Tree> entries) {
            return new Branch(entries, Map.of(), Place.NOWHERE);
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

        private static final Pattern DECIMAL = Pattern
                .compile("[-+]?([0-9]{1,30}([.][0-9]{0,20})?|[.][0-9]{1,20})([eE][-+]?[0-9]{1,2})?");

        /** A letter and its accent may come as two characters; together they are one glyph. */
        public static Leaf of(String text, Kind kind, Place place) {
            return new Leaf(Normalizer.normalize(text, Normalizer.Form.NFC), kind, place);
        }

        /** A text that the program itself writes. */
        public static Leaf written(Object text) {
            return of(text.toString(), Kind.TEXT, Place.NOWHERE);
        }

        /** A number that the program itself writes. */
        public static Leaf counted(Object number) {
            return of(number.toString(), Kind.NUMBER, Place.NOWHERE);
        }

        /** What YAML takes it for. */
        public enum Kind {
            TEXT, NUMBER, TRUTH, NOTHING
        }

        /** A text, a truth, an exact number, or nothing. */
        public @Nullable Object value() {
            return switch (kind) {
            case TEXT -> text;
            case NUMBER -> number().<Object>map(exact -> exact).orElse(text);
            case TRUTH -> Boolean.valueOf(text);
            case NOTHING -> null;
            };
        }

        /** The exact number; empty for all else, for infinity, and for numbers so long that to compute with them takes hours. */
        Optional<BigDecimal> number() {
            return kind == Kind.NUMBER && DECIMAL.matcher(text).matches()
                    ? Optional.of(new BigDecimal(text))
                    : Optional.empty();
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
