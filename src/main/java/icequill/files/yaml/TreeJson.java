package icequill.files.yaml;

import icequill.problem.Place;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a YAML file says, as JSON on one line, which the reader of YAML reads back as the same. */
public final class TreeJson {

    private static final JsonMapper MAPPER = JsonMapper.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private TreeJson() {
    }

    /** Numbers are written as they were: a pH of 7.0 says more than one of 7. */
    public static String text(Tree tree) {
        return MAPPER.writeValueAsString(exact(tree));
    }

    /** The same for a writer of JSON. */
    public static JsonNode exact(Tree tree) {
        return node(tree, NODES::numberNode);
    }

    /**
     * What JSON of keys and values says, as the reader of YAML would read it, but many times as fast; nothing of a text without letters.
     *
     * @param name where it stands, for problems
     */
    public static Tree.Branch branch(String json, String name) {
        Place place = new Place(name, 1, "");
        return json.isBlank() ? ValueTree.empty(place) : branch((ObjectNode) MAPPER.readTree(json), place);
    }

    private static Tree.Branch branch(ObjectNode object, Place place) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Map<String, Place> keys = new LinkedHashMap<>();
        object.properties().forEach(entry -> {
            String path = place.path().isEmpty() ? entry.getKey() : place.path() + "." + entry.getKey();
            Place at = new Place(place.file(), place.line(), path);
            keys.put(entry.getKey(), at);
            entries.put(entry.getKey(), tree(entry.getValue(), at));
        });
        return new Tree.Branch(entries, keys, place);
    }

    private static Tree tree(JsonNode node, Place place) {
        return switch (node.getNodeType()) {
        case OBJECT -> branch((ObjectNode) node, place);
        case ARRAY -> new Tree.Row(IntStream.range(0, node.size()).mapToObj(i -> tree(node.get(i),
                new Place(place.file(), place.line(), place.path() + "[" + i + "]"))).toList(), place);
        case NUMBER -> Tree.Leaf.of(node.decimalValue().toPlainString(), Tree.Leaf.Kind.NUMBER, place);
        case BOOLEAN -> Tree.Leaf.of(node.asString(), Tree.Leaf.Kind.TRUTH, place);
        case NULL -> Tree.Leaf.of("", Tree.Leaf.Kind.NOTHING, place);
        default -> Tree.Leaf.of(node.asString(), Tree.Leaf.Kind.TEXT, place);
        };
    }

    /** As a schema reads it: whole numbers without a fraction, however the file writes them. */
    static JsonNode node(Tree tree) {
        return node(tree, TreeJson::number);
    }

    private static JsonNode node(Tree tree, Function<BigDecimal, JsonNode> number) {
        return switch (tree) {
        case Tree.Branch branch -> {
            ObjectNode object = NODES.objectNode();
            branch.entries().forEach((key, value) -> object.set(key, node(value, number)));
            yield object;
        }
        case Tree.Row row -> {
            ArrayNode array = NODES.arrayNode();
            row.items().forEach(item -> array.add(node(item, number)));
            yield array;
        }
        case Tree.Leaf leaf -> switch (leaf.kind()) {
        case TEXT -> NODES.stringNode(leaf.text());
        case NUMBER -> leaf.number().map(number).orElseGet(() -> NODES.stringNode(leaf.text()));
        case TRUTH -> NODES.booleanNode(Boolean.parseBoolean(leaf.text()));
        case NOTHING -> NODES.nullNode();
        };
        };
    }

    private static JsonNode number(BigDecimal number) {
        return number.stripTrailingZeros().scale() <= 0
                ? NODES.numberNode(number.toBigInteger())
                : NODES.numberNode(number);
    }
}
